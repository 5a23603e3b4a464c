package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.measure.WorkTime;
import chargehand.method.kit.Machine;
import chargehand.method.plan.Holding;
import chargehand.part.End;
import chargehand.trade.sum.Step;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * One way of holding the work as it stands.
 *
 * @param machine it is held on
 * @param holding how
 * @param work what kind of work can be done in it
 * @param clear the stretch of the axis that tools can reach from the side
 * @param faces the ends that tools can reach along the axis
 * @param gripped what the jaws bear on, to know what the work is held true to
 * @param costs the time to set up once and to load each piece
 * @param instructions how to set it up
 * @param outOfRound how far a hollow place goes out of round under the jaws, so that what is cut in it is lobed after
 * @param nips whether hard jaws bear where boring would leave too thin a wall for them
 * @param bends how far the work bends from a finishing cut where it is weakest in this holding
 * @param working grip, overhang and run-out as worked out
 */
public record Choice(
        Machine machine,
        Holding holding,
        Work work,
        Stretch clear,
        Set<End> faces,
        Gripped gripped,
        Costs costs,
        List<String> instructions,
        Length outOfRound,
        boolean nips,
        Length bends,
        List<Step> working) {
    public Choice {
        faces = Set.copyOf(faces);
        instructions = List.copyOf(instructions);
        working = List.copyOf(working);
    }

    /** The kinds of work. */
    public enum Work {
        /** The work turns: facing, turning, boring, threading, parting. */
        TURNING,
        /** The work is indexed under a milling cutter. */
        DIVIDING,
        /** The work stands on an end under the spindle of a mill. */
        UPRIGHT,
        /** The work lies across under a drill. */
        CROSS_DRILLING,
        /** The work lies along under a milling cutter. */
        KEYWAYING
    }

    /** A stretch of the axis, from less to more. */
    public record Stretch(Length from, Length to) {
        public boolean contains(Length start, Length end) {
            return !start.isLessThan(from) && !end.isMoreThan(to);
        }
    }

    /** The time it costs. */
    public record Costs(WorkTime setting, WorkTime loading) {
        public WorkTime time(int count) {
            return setting.plus(loading.times(count));
        }
    }

    /** What the work is held by. */
    public sealed interface Gripped {
        /** The stock's own surface. */
        record Raw() implements Gripped {}

        /** A finished outside section. */
        record OnSection(int index) implements Gripped {}

        /** A finished bore. */
        record OnBore(int index) implements Gripped {}

        /** An end face, clamped against a faceplate. */
        record OnFace(End end) implements Gripped {}

        /** The two centre holes. */
        record OnCentres() implements Gripped {}
    }

    /** A holding that presses nothing out of round and in which nothing bends. */
    Choice(
            Machine machine,
            Holding holding,
            Work work,
            Stretch clear,
            Set<End> faces,
            Gripped gripped,
            Costs costs,
            List<String> instructions,
            List<Step> working) {
        this(
                machine,
                holding,
                work,
                clear,
                faces,
                gripped,
                costs,
                instructions,
                Length.ZERO,
                false,
                Length.ZERO,
                working);
    }

    /** The same, pressed out of round, with the working of it. */
    Choice pressed(Length by, boolean nipped, List<Step> more) {
        List<Step> all = Stream.concat(working.stream(), more.stream()).toList();
        return new Choice(machine, holding, work, clear, faces, gripped, costs, instructions, by, nipped, bends, all);
    }

    /** The same, bending from the tool, with the working of it. */
    Choice bending(Length by, List<Step> more) {
        List<Step> all = Stream.concat(working.stream(), more.stream()).toList();
        return new Choice(
                machine, holding, work, clear, faces, gripped, costs, instructions, outOfRound, nips, by, all);
    }

    /** The run-out to expect in this holding, against what it is held by. */
    public Length runOut() {
        return holding.runOut();
    }

    /**
     * The ends into which tools can go along the axis: not where a mandrel or opening jaws fill the bore, and not into a thin
     * disc that lies in a step of soft jaws for a light facing cut.
     */
    public Set<End> open() {
        return switch (holding) {
            case Holding.InChuck chuck ->
                switch (chuck.bearing()) {
                    case Holding.Bearing.Closing closing -> faces;
                    case Holding.Bearing.SoftJaws soft -> GripRules.isInStep(chuck.grip()) ? Set.of() : faces;
                    case Holding.Bearing.SplitBush bush -> faces;
                    case Holding.Bearing.Opening opening -> Set.of();
                };
            case Holding.OnMandrel mandrel -> Set.of();
            case Holding.OnStub stub -> Set.of();
            case Holding.OnFaceplate plate -> Set.of(plate.headstock().other());
            case Holding.InCollet collet -> faces;
            case Holding.BetweenCentres centres -> faces;
            case Holding.InDividingHead head -> faces;
            case Holding.LaidAcross laid -> faces;
            case Holding.InVice vice -> faces;
            case Holding.OnTable table -> faces;
            case Holding.Clamped clamped -> faces;
        };
    }

    /** Whether the tailstock carries a centre, so that nothing can be done along the axis. */
    public boolean isCentred() {
        return switch (holding) {
            case Holding.InChuck chuck -> isCentre(chuck.support());
            case Holding.InCollet collet -> isCentre(collet.support());
            case Holding.BetweenCentres centres -> true;
            case Holding.OnMandrel mandrel -> true;
            case Holding.OnStub stub -> false;
            case Holding.OnFaceplate plate -> false;
            case Holding.InDividingHead head -> isCentre(head.support());
            case Holding.LaidAcross laid -> false;
            case Holding.InVice vice -> false;
            case Holding.OnTable table -> false;
            case Holding.Clamped clamped -> false;
        };
    }

    private static boolean isCentre(Holding.Support support) {
        return switch (support) {
            case Holding.Support.Centre centre -> true;
            case Holding.Support.TravellingSteady steady -> true;
            case Holding.Support.FixedSteady steady -> false;
            case Holding.Support.None none -> false;
        };
    }
}
