package chargehand.trade.screwcutting;

import chargehand.measure.Angle;
import chargehand.measure.AngleText;
import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Notations;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Kind;
import chargehand.trade.thread.ScrewThread;
import java.util.Locale;

/**
 * How the tool is fed into the work: along a slide set over from square to the axis, so that one side of the tool does most
 * of the cutting, or straight in.
 *
 * @param angle of the slide from square to the axis; zero for straight in
 */
public record Infeed(Angle angle) {
    /** Square to the axis. */
    public static final Infeed STRAIGHT = new Infeed(Angle.degrees(0));

    static final Kind<Infeed> INFEED = new InfeedKind();

    private static final double LEFT_FOR_THE_OTHER_FLANK_DEGREES = 0.5;
    private static final double MOST_DEGREES = 45;

    public Infeed {
        if (angle.degrees() < 0 || angle.degrees() > MOST_DEGREES) {
            throw new IllegalArgumentException(
                    "an infeed lies between 0 and 45° from square, not " + angle.degrees() + "°");
        }
    }

    /**
     * What is usual for a thread: half a degree less than half the angle between its flanks, so that the other flank is
     * just scraped clean; straight in where the flanks stand steeply.
     */
    public static Infeed usual(ScrewThread thread) {
        return switch (thread.form()) {
            case ISO_METRIC, UNIFIED, WHITWORTH, WHITWORTH_PIPE, BRITISH_ASSOCIATION, CYCLE ->
                new Infeed(Angle.degrees(
                        thread.form().includedAngle().half().degrees() - LEFT_FOR_THE_OTHER_FLANK_DEGREES));
            case TRAPEZOIDAL, ACME, SQUARE -> STRAIGHT;
        };
    }

    public boolean isStraight() {
        return angle.degrees() == 0;
    }

    /** How far the slide moves for a depth on radius. */
    public Length along(Length depth) {
        return depth.times(1 / angle.cos());
    }

    private record InfeedKind() implements Kind<Infeed> {
        @Override
        public String name() {
            return "infeed";
        }

        @Override
        public Infeed read(String written, LengthUnit unit) {
            if (written.toLowerCase(Locale.ROOT).equals("straight")) {
                return STRAIGHT;
            }
            Angle angle = Notations.ANGLE.read(written, unit);
            if (angle.degrees() < 0 || angle.degrees() > MOST_DEGREES) {
                throw new Unreadable("write straight, or the slide's angle from square, from 0 to 45°, such as 29.5.");
            }
            return new Infeed(angle);
        }

        @Override
        public String echo(Infeed infeed) {
            return infeed.isStraight() ? "straight" : AngleText.degrees(infeed.angle(), 2) + " from square";
        }
    }
}
