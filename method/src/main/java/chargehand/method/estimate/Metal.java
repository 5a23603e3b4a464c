package chargehand.method.estimate;

import chargehand.measure.Length;
import chargehand.method.kit.Kit;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.rack.Piece;
import chargehand.trade.material.Material;
import chargehand.trade.material.Materials;
import java.util.Optional;

/** The metal that a method uses up. */
final class Metal {
    private static final double CUBIC_MM_IN_M3 = 1e9;

    private final Method method;
    private final Kit kit;

    Metal(Method method, Kit kit) {
        this.method = method;
        this.kit = kit;
    }

    /** The bar that one piece uses up, with the slot or the kerf to the next. */
    Length perPiece() {
        return switch (method.stock().blank()) {
            case Blank.RoundBar bar ->
                bar.onBar() ? parted(bar.from(), bar.to()) : sawn(bar.to().minus(bar.from()));
            case Blank.PolygonBar bar ->
                bar.onBar() ? parted(bar.from(), bar.to()) : sawn(bar.to().minus(bar.from()));
            case Blank.OldPart old -> Length.ZERO;
            case Blank.Slab slab -> sawn(slab.length());
        };
    }

    private Length sawn(Length length) {
        return kit.saws().stream()
                .findFirst()
                .map(saw -> length.plus(saw.kerf()))
                .orElse(length);
    }

    /** From the free end to the far side of the parting slot: what is in the jaws stays on the bar. */
    private Length parted(Length from, Length to) {
        return method.setUps().stream()
                .flatMap(setUp -> setUp.operations().stream())
                .map(Operation::cut)
                .filter(Cut.PartOff.class::isInstance)
                .map(Cut.PartOff.class::cast)
                .findFirst()
                .map(off -> switch (off.partSide()) {
                    case A -> off.to().minus(from);
                    case B -> to.minus(off.from());
                })
                .orElseGet(() -> to.minus(from));
    }

    /** The area of a cut square across the stock (mm²). */
    private double area() {
        return switch (method.stock().blank()) {
            case Blank.RoundBar bar -> Math.PI / 4 * square(bar.diameter());
            case Blank.PolygonBar bar -> bar.sides() * square(bar.flats()) / 4 * Math.tan(Math.PI / bar.sides());
            case Blank.OldPart old -> 0;
            case Blank.Slab slab -> slab.width().mm() * slab.thickness().mm();
        };
    }

    private static double square(Length length) {
        return length.mm() * length.mm();
    }

    /** What it weighs for the whole count (kg); empty where the tables do not know the material. */
    Optional<Double> kilograms(Piece piece) {
        return Materials.find(piece.material())
                .map(Material::physical)
                .map(physical ->
                        physical.kilogramsPerCubicMetre() * area() * perPiece().mm() * method.count() / CUBIC_MM_IN_M3);
    }
}
