package chargehand.trade.cutting;

import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.Power;
import chargehand.measure.Speed;
import chargehand.measure.SpindleSpeed;
import chargehand.measure.Torque;
import chargehand.measure.WorkTime;
import java.util.List;
import java.util.Optional;

/**
 * How a cut is set.
 *
 * @param spindle its speed
 * @param feed for one turn of the spindle
 * @param feedRate the feed in a minute
 * @param depths of the passes, in order; one for a hole
 * @param load force and power of the heaviest pass; empty where no cutting force is published for the material
 * @param time cutting time of all passes; empty where no length is given
 * @param roughness Ra that feed and nose leave, in theory
 * @param limit what keeps the cut from going faster
 */
public record CutSettings(
        Spindle spindle,
        Length feed,
        Speed feedRate,
        List<Length> depths,
        Optional<Load> load,
        Optional<WorkTime> time,
        Optional<Length> roughness,
        Limit limit) {
    public CutSettings {
        depths = List.copyOf(depths);
    }

    /**
     * The spindle's speed.
     *
     * @param wanted surface speed that material and tool suit
     * @param speed surface speed at the rpm chosen
     * @param ideal rpm for the speed wanted
     * @param rpm chosen from the machine's own
     */
    public record Spindle(Speed wanted, Speed speed, SpindleSpeed ideal, SpindleSpeed rpm) {}

    /**
     * What a pass asks of the machine.
     *
     * @param force on the tool: along the cut in turning and milling, along the axis for a drill
     * @param torque at the spindle
     * @param power at the cutting edge
     */
    public record Load(Force force, Torque torque, Power power) {}

    /** What keeps a cut from going faster. */
    public enum Limit {
        /** Nothing but what tool and material bear. */
        TOOL("what the tool bears in this material"),
        /** The motor has no more to give. */
        POWER("the power of the machine"),
        /** The spindle cannot turn faster. */
        FASTEST("the machine's fastest speed"),
        /** Even the slowest speed is faster than tool and material suit. */
        SLOWEST("the machine's slowest speed, which is faster than suits"),
        /** A faster feed would leave too rough a finish. */
        FINISH("the finish that is wanted"),
        /** A heavier cut would bend the work further away. */
        STIFFNESS("the stiffness of the work, which bends away from the tool");

        private final String say;

        Limit(String say) {
            this.say = say;
        }

        /** The limit in words. */
        public String say() {
            return say;
        }
    }
}
