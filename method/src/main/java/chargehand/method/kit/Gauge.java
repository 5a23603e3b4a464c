package chargehand.method.kit;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Limits;

/** What a size is read or judged with. */
public sealed interface Gauge {
    /** What the shop calls it. */
    String name();

    /** One that reads a size. */
    sealed interface Reads extends Gauge {
        /** The smallest difference it shows. */
        Length resolves();
    }

    /** A steel rule. */
    record Rule(String name, LengthUnit unit, Length longest, Length resolves) implements Reads {}

    /** A vernier or dial caliper: outside, inside and depth. */
    record Caliper(String name, LengthUnit unit, Length longest, Length resolves) implements Reads {}

    /**
     * A micrometer.
     *
     * @param side what it measures
     * @param range the least and the most it reads
     */
    record Micrometer(String name, LengthUnit unit, Measures side, Limits range, Length resolves) implements Reads {}

    /** A dial indicator, for run-out and squareness. */
    record Indicator(String name, LengthUnit unit, Length resolves) implements Reads {}

    /** A protractor; it reads angles. */
    record Protractor(String name, Angle resolves) implements Gauge {}

    /**
     * A go and no-go gauge for a hole.
     *
     * @param size nominal
     * @param limits the ISO 286 code it judges, such as {@code H7}
     */
    record Plug(String name, Length size, String limits) implements Gauge {}

    /**
     * A gauge for a thread.
     *
     * @param thread the thread's designation
     * @param form ring for outside threads, plug for inside ones
     */
    record ThreadGauge(String name, String thread, ThreadForm form) implements Gauge {}

    /** A set of screw pitch gauges or a centre gauge for one angle of thread. */
    record PitchGauges(String name, Angle angle) implements Gauge {}

    /** What a micrometer measures. */
    enum Measures {
        OUTSIDE,
        INSIDE,
        DEPTH
    }

    /** The two forms of a thread gauge. */
    enum ThreadForm {
        RING,
        PLUG
    }
}
