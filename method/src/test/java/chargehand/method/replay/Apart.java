package chargehand.method.replay;

import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Whether two set-ups can be done in either order, by common practice and by nothing but their cuts and holdings.
 *
 * <p>Turned work: nothing is sawn or parted off in either, what one cuts along the outside lies clear of what the other
 * cuts there and of where the other grips, and not both work into the same end. A hole drilled on the axis and one across
 * it may come in either order. A block: both mill, or neither does, and neither mills the face on which the other lies.
 */
final class Apart {
    private Apart() {}

    static boolean are(SetUp one, SetUp other) {
        if (cuts(one).anyMatch(Apart::isEndOfStock) || cuts(other).anyMatch(Apart::isEndOfStock)) {
            return false;
        }
        return isBlock(one)
                ? mills(one) == mills(other) && !millsBed(one, other) && !millsBed(other, one)
                : areClear(one, other);
    }

    private static Stream<Cut> cuts(SetUp setUp) {
        return setUp.operations().stream().map(Operation::cut);
    }

    private static boolean isEndOfStock(Cut cut) {
        return cut instanceof Cut.SawOff || cut instanceof Cut.PartOff;
    }

    private static boolean isBlock(SetUp setUp) {
        return setUp.holding() instanceof Holding.InVice || setUp.holding() instanceof Holding.OnTable;
    }

    private static boolean mills(SetUp setUp) {
        return cuts(setUp).anyMatch(Cut.MillFace.class::isInstance);
    }

    private static boolean millsBed(SetUp one, SetUp other) {
        return cuts(one)
                .anyMatch(cut ->
                        cut instanceof Cut.MillFace mill && bed(other).stream().anyMatch(mill.face()::equals));
    }

    private static Optional<Holding.Face> bed(SetUp setUp) {
        return switch (setUp.holding()) {
            case Holding.InVice vice -> Optional.of(vice.down());
            case Holding.OnTable table -> Optional.of(table.down());
            default -> Optional.empty();
        };
    }

    private static boolean areClear(SetUp one, SetUp other) {
        boolean cuts =
                beside(one).stream().noneMatch(span -> beside(other).stream().anyMatch(span::meets));
        boolean ends = places(one)
                .filter(place -> !(place instanceof CutPlace.Beside || place instanceof CutPlace.Anywhere))
                .noneMatch(place -> places(other).anyMatch(place::equals));
        return cuts && ends && isGripClear(one, other) && isGripClear(other, one);
    }

    /** Jaws may bear over a hole or a keyway, on nothing else that the other set-up makes. */
    private static boolean isGripClear(SetUp held, SetUp other) {
        return grip(held.holding())
                .filter(grip -> cuts(other)
                        .filter(cut -> !(cut instanceof Cut.DrillAcross || cut instanceof Cut.MillKeyway))
                        .flatMap(cut -> CutPlace.of(cut).stream())
                        .anyMatch(place -> place instanceof CutPlace.Beside beside
                                && beside.span().meets(grip)))
                .isEmpty();
    }

    private static List<Span> beside(SetUp setUp) {
        return places(setUp)
                .filter(CutPlace.Beside.class::isInstance)
                .map(place -> ((CutPlace.Beside) place).span())
                .toList();
    }

    private static Stream<CutPlace> places(SetUp setUp) {
        return cuts(setUp).flatMap(cut -> CutPlace.of(cut).stream());
    }

    private static Optional<Span> grip(Holding holding) {
        return switch (holding) {
            case Holding.InChuck held -> Optional.of(span(held.grip()));
            case Holding.InCollet held -> Optional.of(span(held.grip()));
            case Holding.InDividingHead held -> Optional.of(span(held.grip()));
            case Holding.LaidAcross held -> Optional.of(span(held.grip()));
            case Holding.BetweenCentres held -> Optional.of(span(held.dog()));
            default -> Optional.empty();
        };
    }

    private static Span span(Holding.Grip grip) {
        return new Span(grip.from(), grip.to());
    }
}
