package chargehand.method.stock;

import static chargehand.measure.LengthText.both;

import chargehand.measure.Length;
import chargehand.method.rack.Piece;
import chargehand.method.rack.Shape;
import chargehand.method.stock.Raw.Direction;
import chargehand.method.stock.Raw.Lies;
import chargehand.part.Body;
import chargehand.part.Part;
import chargehand.part.Size;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;

/** Whether a block goes into a flat or a square bar, whichever way it has to lie. */
final class BlockRoom {
    private final Part part;
    private final Body.Block block;
    private final Piece piece;

    private BlockRoom(Part part, Body.Block block, Piece piece) {
        this.part = part;
        this.block = block;
        this.piece = piece;
    }

    static Room in(Part part, Body.Block block, Piece piece) {
        BlockRoom room = new BlockRoom(part, block, piece);
        return switch (piece.shape()) {
            case Shape.Flat(var width, var thickness) -> room.inFlat(width.length(), thickness.length());
            case Shape.Polygon(int sides, var flats) ->
                sides == 4
                        ? room.inFlat(flats.length(), flats.length())
                        : new Room.NotEnough("it has " + sides + " sides, and the part is a block");
            case Shape.Round round -> new Room.NotEnough("it is round, and the part is a block");
        };
    }

    /** Tries every way of lying and takes the one that uses least of the bar's length. */
    private Room inFlat(Length width, Length thickness) {
        Length wide = Length.most(width, thickness);
        Length thin = Length.least(width, thickness);
        return everyWay().stream()
                .filter(lies -> goesIn(lies.across(), wide) && goesIn(lies.through(), thin))
                .min(Comparator.comparing((Lies lies) -> size(lies.along()).length())
                        .thenComparing(lies -> size(lies.through()).length(), Comparator.reverseOrder()))
                .map(lies -> enough(lies, wide, thin))
                .orElseGet(() -> tooSmall(wide, thin));
    }

    private static List<Lies> everyWay() {
        return Arrays.stream(Direction.values())
                .flatMap(along -> Arrays.stream(Direction.values())
                        .filter(across -> across != along)
                        .map(across -> new Lies(along, across, third(along, across))))
                .toList();
    }

    private static Direction third(Direction one, Direction other) {
        return Arrays.stream(Direction.values())
                .filter(direction -> direction != one && direction != other)
                .findFirst()
                .orElseThrow();
    }

    private Size size(Direction direction) {
        return switch (direction) {
            case LENGTH -> block.length();
            case WIDTH -> block.width();
            case THICKNESS -> block.thickness();
        };
    }

    private boolean goesIn(Direction direction, Length stock) {
        return staysAsDrawn(direction, stock)
                || !size(direction).length().plus(skin()).isMoreThan(stock);
    }

    private boolean staysAsDrawn(Direction direction, Length stock) {
        Size size = size(direction);
        return size.length().equals(stock) && Skin.mayStay(stock, size.limits(part.general()), piece.condition());
    }

    /** What comes off both sides together. */
    private Length skin() {
        return Skin.perSide(piece.condition()).times(2);
    }

    private Room enough(Lies lies, Length wide, Length thin) {
        boolean asDrawn = staysAsDrawn(lies.across(), wide) || staysAsDrawn(lies.through(), thin);
        String say = both(wide, part.unit()) + " wide for "
                + both(size(lies.across()).length(), part.unit()) + ", " + both(thin, part.unit()) + " thick for "
                + both(size(lies.through()).length(), part.unit());
        List<String> cautions = asDrawn ? List.of(Skin.measureFirst(piece)) : List.of();
        return new Room.Enough(
                new Raw.Flat(wide, thin, lies), size(lies.along()).length(), asDrawn, say, cautions);
    }

    private Room tooSmall(Length wide, Length thin) {
        return new Room.NotEnough("it is too small: " + both(wide, part.unit()) + " by " + both(thin, part.unit())
                + ", and the block needs " + both(block.width().length(), part.unit()) + " by "
                + both(block.thickness().length(), part.unit()) + " with "
                + both(Skin.perSide(piece.condition()), part.unit()) + " to come off each rough side");
    }
}
