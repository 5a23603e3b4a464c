package chargehand.method.plan;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.SpindleSpeed;
import java.util.List;
import java.util.Optional;

/**
 * How the machine is set for one operation.
 *
 * @param tool what cuts, from the kit
 * @param speed from the machine's own list; empty where nothing turns
 * @param feed along the work for each turn (or each minute on a mill), from the machine's own list; empty for hand feed
 * @param passes the cuts in order; empty where there is only one and no dial is set
 * @param gearing the train for the leadscrew, when screw-cutting
 * @param indexing how the work is turned from one cut to the next, when dividing
 * @param topSlide the angle the top slide is set to from the axis, when taper turning with it
 * @param unit the unit of this machine's dials
 * @param coolant what to use, in words
 */
public record Settings(
        String tool,
        Optional<SpindleSpeed> speed,
        Optional<Feed> feed,
        List<Pass> passes,
        Optional<Gearing> gearing,
        Optional<Indexing> indexing,
        Optional<Angle> topSlide,
        LengthUnit unit,
        String coolant) {
    public Settings {
        passes = List.copyOf(passes);
    }

    /** A feed: so much for each turn of the spindle, or so much a minute. */
    public sealed interface Feed {
        record PerTurn(Length length) implements Feed {}

        record PerMinute(Length length) implements Feed {}
    }

    /**
     * One pass.
     *
     * @param number from 1
     * @param dial what the cross or depth dial reads for it, in the dial's own sense, from zero at the surface it started on
     * @param leaves the size it leaves
     */
    public record Pass(int number, Length dial, Length leaves) {}

    /**
     * Change wheels from spindle to leadscrew.
     *
     * @param drivers teeth, in order
     * @param driven teeth, in order, as many as the drivers
     * @param gearbox the gearbox lever or ratio as the plate names it; empty where there is none
     * @param error the relative pitch error, 0 when exact
     * @param dialMarks at which marks of the chasing dial the nut may be closed, in words
     */
    public record Gearing(List<Integer> drivers, List<Integer> driven, String gearbox, double error, String dialMarks) {
        public Gearing {
            drivers = List.copyOf(drivers);
            driven = List.copyOf(driven);
        }
    }

    /**
     * Turning the work by the dividing head.
     *
     * @param divisions how many in the whole turn
     * @param turns whole turns of the crank for one division
     * @param holes further holes
     * @param circle on the circle of so many holes
     * @param geared how the plate is turned meanwhile; empty where it is pinned
     */
    public record Indexing(int divisions, int turns, int holes, int circle, Optional<Geared> geared) {
        /** Plain indexing, the plate pinned. */
        public Indexing(int divisions, int turns, int holes, int circle) {
            this(divisions, turns, holes, circle, Optional.empty());
        }
    }

    /**
     * Gears from the spindle of a dividing head to its plate.
     *
     * @param drivers teeth, that on the spindle first
     * @param driven teeth, that on the worm's shaft last, as many as the drivers
     * @param idlers how many wheels stand between besides: one more makes the plate go the other way
     */
    public record Geared(List<Integer> drivers, List<Integer> driven, int idlers) {
        public Geared {
            drivers = List.copyOf(drivers);
            driven = List.copyOf(driven);
            if (drivers.isEmpty() || drivers.size() != driven.size() || idlers < 0) {
                throw new IllegalArgumentException("gears go in pairs, each driver with what it drives");
            }
        }

        /** Whether the plate goes the way of the crank: with one idler in a single pair, with none in two. */
        public boolean isWithCrank() {
            return (idlers + drivers.size()) % 2 == 0;
        }

        /** The gears in words. */
        public String says() {
            String stud = drivers.size() == 1
                    ? ""
                    : " driving " + driven.getFirst() + ", on the same stud " + drivers.getLast();
            String between = idlers == 0 ? "no idler" : idlers == 1 ? "1 idler" : idlers + " idlers";
            return drivers.getFirst() + " on the spindle" + stud + " driving " + driven.getLast()
                    + " on the worm's shaft, " + between;
        }
    }
}
