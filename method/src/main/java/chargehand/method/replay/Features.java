package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Cut;
import chargehand.part.End;
import chargehand.part.shape.Solid;
import chargehand.trade.thread.ScrewThread;
import java.util.List;
import java.util.stream.Stream;

/**
 * What turned work carries beside the surfaces that turn round its axis.
 *
 * @param threads outside and inside
 * @param flats evenly round the axis, by milling or from bar that has them
 * @param holes across the axis
 * @param keyways in the outside
 * @param centres centre holes in the end faces
 * @param teeth of a wheel
 * @param slots in the walls of bores
 * @param circles of holes in the faces
 */
public record Features(
        List<ThreadCut> threads,
        List<FlatsCut> flats,
        List<Cut.DrillAcross> holes,
        List<Cut.MillKeyway> keyways,
        List<CentreHole> centres,
        List<Solid.TeethPlace> teeth,
        List<Cut.SlotInBore> slots,
        List<Cut.DrillCircle> circles) {
    static final Features NONE =
            new Features(List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of(), List.of());

    public Features {
        threads = List.copyOf(threads);
        flats = List.copyOf(flats);
        holes = List.copyOf(holes);
        keyways = List.copyOf(keyways);
        centres = List.copyOf(centres);
        teeth = List.copyOf(teeth);
        slots = List.copyOf(slots);
        circles = List.copyOf(circles);
    }

    /** A thread and the stretch of its full turns. */
    public record ThreadCut(ScrewThread thread, boolean inside, Span over) {}

    /**
     * Flats and the stretch on which they were cut or rolled; where the work has been turned below them since, they are
     * gone.
     *
     * @param across over two opposite flats; for an odd number twice the distance from axis to flat
     */
    public record FlatsCut(int sides, Length across, Span over) {}

    /** A centre hole and the diameter of its mouth. */
    public record CentreHole(End end, Length diameter) {}

    Features withThread(ThreadCut thread) {
        return new Features(and(threads, thread), flats, holes, keyways, centres, teeth, slots, circles);
    }

    Features withFlats(FlatsCut more) {
        return new Features(threads, and(flats, more), holes, keyways, centres, teeth, slots, circles);
    }

    Features withHole(Cut.DrillAcross hole) {
        return new Features(threads, flats, and(holes, hole), keyways, centres, teeth, slots, circles);
    }

    Features withKeyway(Cut.MillKeyway keyway) {
        return new Features(threads, flats, holes, and(keyways, keyway), centres, teeth, slots, circles);
    }

    Features withSlot(Cut.SlotInBore slot) {
        return new Features(threads, flats, holes, keyways, centres, teeth, and(slots, slot), circles);
    }

    Features withTeeth(Cut.CutTeeth cut) {
        var place = new Solid.TeethPlace(
                cut.teeth() + " teeth", cut.teeth(), cut.pitchDiameter(), cut.root(), cut.from(), cut.to());
        return new Features(threads, flats, holes, keyways, centres, and(teeth, place), slots, circles);
    }

    Features withCircle(Cut.DrillCircle cut) {
        return new Features(threads, flats, holes, keyways, centres, teeth, slots, and(circles, cut));
    }

    Features withCentres(List<CentreHole> others) {
        return new Features(threads, flats, holes, keyways, others, teeth, slots, circles);
    }

    private static <T> List<T> and(List<T> list, T more) {
        return Stream.concat(list.stream(), Stream.of(more)).toList();
    }
}
