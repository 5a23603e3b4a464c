package chargehand.trade.wheels;

import chargehand.measure.LengthUnit;
import chargehand.measure.Pitch;
import chargehand.measure.Ratio;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import chargehand.trade.thread.ThreadKinds;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.numbers.fraction.BigFraction;

/** The kinds of field that gearing a lathe asks for. */
final class WheelKinds {
    /** What is to be cut: a pitch, or a thread that has one. With several starts the lead counts. */
    static final Kind<Pitch> LEAD = ThreadKinds.LEAD;

    /** Teeth of the wheels owned. */
    static final Kind<List<Integer>> WHEELS =
            Kinds.listOf(Kinds.count(WheelSet.FEWEST_TEETH, WheelSet.MOST_TEETH), WheelSet.MOST_WHEELS);

    /** Ratios of a gearbox. */
    static final Kind<List<BigFraction>> GEARBOX = new GearboxKind();

    /** What the quadrant takes: {@code 60 to 140} teeth together. */
    static final Kind<Quadrant> QUADRANT = Kinds.by("limits of centres", WheelKinds::quadrant, WheelKinds::said);

    private static final Pattern TOGETHER = Pattern.compile("(\\d{1,4})\\s*(?:to|-|–|,|;)\\s*(\\d{1,4})\\D*");

    private WheelKinds() {}

    private static Quadrant quadrant(String written) {
        Matcher matcher = TOGETHER.matcher(written.trim());
        if (!matcher.matches()) {
            throw new Unreadable(
                    "write the fewest and the most teeth that two wheels in mesh may have together, such as"
                            + " 60 to 140.");
        }
        int least = Integer.parseInt(matcher.group(1));
        int most = Integer.parseInt(matcher.group(2));
        if (least < 1 || most < least) {
            throw new Unreadable("the fewest teeth together come first, then the most: 60 to 140, say.");
        }
        return new Quadrant(least, most);
    }

    private static String said(Quadrant quadrant) {
        return quadrant.leastTogether() + " to " + quadrant.mostTogether() + " teeth together";
    }

    private record GearboxKind() implements Kind<List<BigFraction>> {
        private static final int MOST_RATIOS = 100;
        private static final double MOST_RATIO = 1000;
        private static final Kind<List<Ratio>> RATIOS = Kinds.listOf(
                Kinds.where(
                        Kinds.NUMBER,
                        ratio -> ratio.exact().signum() > 0
                                && ratio.value() < MOST_RATIO
                                && ratio.value() > 1 / MOST_RATIO,
                        "is not a gearbox ratio: write turns of the leadscrew for one of the wheels, such as 1/2"),
                MOST_RATIOS);

        @Override
        public String name() {
            return RATIOS.name();
        }

        @Override
        public List<BigFraction> read(String written, LengthUnit unit) {
            return RATIOS.read(written, unit).stream().map(Ratio::exact).toList();
        }

        @Override
        public String echo(List<BigFraction> ratios) {
            return RATIOS.echo(ratios.stream().map(Ratio::new).toList());
        }
    }
}
