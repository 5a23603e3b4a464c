package chargehand.method.stock;

import static chargehand.measure.LengthText.both;

import chargehand.measure.Length;
import chargehand.method.rack.Piece;
import chargehand.method.rack.Shape;
import chargehand.part.Body;
import chargehand.part.Part;
import chargehand.part.Section;
import chargehand.trade.thread.ThreadLimits;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Whether a turned part goes into a bar. */
final class TurnedRoom {
    private final Part part;
    private final Body.Turned body;
    private final Piece piece;
    private final Length skin;

    private TurnedRoom(Part part, Body.Turned body, Piece piece) {
        this.part = part;
        this.body = body;
        this.piece = piece;
        this.skin = Skin.perSide(piece.condition());
    }

    static Room in(Part part, Body.Turned body, Piece piece) {
        return new TurnedRoom(part, body, piece).room();
    }

    private Room room() {
        return switch (piece.shape()) {
            case Shape.Round(var diameter) -> inRound(new Raw.Round(diameter.length()));
            case Shape.Polygon(int sides, var flats) -> inPolygon(new Raw.Polygon(sides, flats.length()));
            case Shape.Flat flat -> new Room.NotEnough("it is flat, and the part is turned");
        };
    }

    private Room inRound(Raw.Round raw) {
        if (leavesAsDrawn(raw)) {
            return enough(raw, true, "the largest diameter is the bar's own and stays as drawn");
        }
        return turnedDown(raw, raw.diameter());
    }

    private Room inPolygon(Raw.Polygon raw) {
        if (leavesAsDrawn(raw)) {
            return enough(raw, true, "the flats stay as drawn");
        }
        return turnedDown(raw, raw.flats());
    }

    /** The part must lie wholly inside a circle of the bar's least size across, less its skin. */
    private Room turnedDown(Raw raw, Length across) {
        Length needed = body.largestDiameter().plus(skin.times(2));
        String say = both(across, part.unit()) + " for at least " + both(needed, part.unit())
                + ", which is the largest " + both(body.largestDiameter(), part.unit()) + " and "
                + both(skin, part.unit()) + " off each side";
        return across.isLessThan(needed) ? new Room.NotEnough("it is too thin: " + say) : enough(raw, false, say);
    }

    private Room.Enough enough(Raw raw, boolean asDrawn, String say) {
        return new Room.Enough(raw, body.length(), asDrawn, say, asDrawn ? cautions(raw) : List.of());
    }

    private List<String> cautions(Raw raw) {
        List<String> cautions = new ArrayList<>();
        cautions.add(Skin.measureFirst(piece));
        body.outside().stream()
                .flatMap(section -> skim(section, raw).stream())
                .distinct()
                .forEach(cautions::add);
        return cautions;
    }

    /** What to mind where a thread is cut on the bar and its class asks for less than the bar's full size. */
    private Optional<String> skim(Section section, Raw raw) {
        return section instanceof Section.Threaded threaded
                        && threaded.thread().major().equals(raw.largestAcross())
                ? ThreadLimits.find(threaded.thread(), threaded.fit())
                        .flatMap(ThreadLimits::external)
                        .flatMap(limits -> limits.major().most())
                        .filter(most -> most.isLessThan(raw.largestAcross()))
                        .map(most -> "The class of " + threaded.thread() + " asks for no more than "
                                + both(most, part.unit())
                                + " over the crests: if the bar is fuller, skim the end before it is screwed.")
                : Optional.empty();
    }

    private boolean leavesAsDrawn(Raw.Round raw) {
        return body.outside().stream().anyMatch(section -> isAsDrawn(section, raw))
                && body.outside().stream()
                        .allMatch(section -> isAsDrawn(section, raw) || cleansUp(section, raw.diameter()));
    }

    private boolean leavesAsDrawn(Raw.Polygon raw) {
        return body.outside().stream().anyMatch(section -> isAsDrawn(section, raw))
                && body.outside().stream()
                        .allMatch(section -> isAsDrawn(section, raw) || cleansUp(section, raw.flats()));
    }

    private boolean isAsDrawn(Section section, Raw.Round raw) {
        if (!isFree(section)) {
            return false;
        }
        return switch (section) {
            case Section.Round(var stretch, var diameter) ->
                diameter.length().equals(raw.diameter())
                        && Skin.mayStay(raw.diameter(), diameter.limits(part.general()), piece.condition());
            case Section.Threaded(var stretch, var thread, var fit) ->
                thread.major().equals(raw.diameter()) && piece.condition() == Piece.Condition.BRIGHT;
            case Section.Cone cone -> false;
            case Section.Polygon polygon -> false;
            case Section.Groove groove -> false;
            case Section.Toothed toothed -> false;
            case Section.Knurled knurled -> false;
            case Section.Curved curved -> false;
        };
    }

    private boolean isAsDrawn(Section section, Raw.Polygon raw) {
        return section instanceof Section.Polygon polygon
                && isFree(section)
                && polygon.sides() == raw.sides()
                && polygon.flats().length().equals(raw.flats())
                && Skin.mayStay(raw.flats(), polygon.flats().limits(part.general()), piece.condition());
    }

    /** Whether no other feature has to run true to the section, nor it to another. */
    private boolean isFree(Section section) {
        return part.ties().stream()
                .noneMatch(tie -> tie.of().equals(section.name()) || tie.to().equals(section.name()));
    }

    private boolean cleansUp(Section section, Length across) {
        Length largest = Length.most(section.diameterTowardsA(), section.diameterTowardsB());
        return !largest.plus(skin.times(2)).isMoreThan(across);
    }
}
