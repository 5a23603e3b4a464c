package chargehand.trade.drill;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Source;
import chargehand.trade.thread.ScrewThread;
import java.util.Locale;

/** How the hole to aim at before tapping is come by, each way with its own words for the working. */
sealed interface HoleRule {
    /** The rule in words. */
    String why();

    /** The rule in symbols. */
    String formula();

    /** The rule with the thread's numbers in it. */
    String numbers(ScrewThread thread, LengthUnit unit);

    /** The hole by the rule. */
    Length hole(ScrewThread thread);

    Source source();

    /**
     * A part of the thread.
     *
     * @param engagement the part, 1 for all of it as trade practice counts
     * @param asked whether it was asked for, so that it comes before the limits
     */
    record Part(double engagement, String why, boolean asked) implements HoleRule {
        @Override
        public String formula() {
            return "hole = major − part × full engagement";
        }

        @Override
        public String numbers(ScrewThread thread, LengthUnit unit) {
            return String.format(
                    Locale.ROOT,
                    "%s − %.3f × %s",
                    LengthText.figures(thread.major(), unit),
                    engagement,
                    LengthText.figures(thread.profile().fullEngagement(), unit));
        }

        @Override
        public Length hole(ScrewThread thread) {
            return thread.major().minus(thread.profile().fullEngagement().times(engagement));
        }

        @Override
        public Source source() {
            return Source.COMMON_PRACTICE;
        }
    }

    /** The major diameter less the pitch, as metric tables have it. */
    record LessPitch() implements HoleRule {
        @Override
        public String why() {
            return "Metric tables take the major diameter less the pitch, about 77 % of the thread";
        }

        @Override
        public String formula() {
            return "hole = major − pitch";
        }

        @Override
        public String numbers(ScrewThread thread, LengthUnit unit) {
            return LengthText.figures(thread.major(), unit) + " − "
                    + LengthText.figures(thread.pitch().length(), unit);
        }

        @Override
        public Length hole(ScrewThread thread) {
            return thread.major().minus(thread.pitch().length());
        }

        @Override
        public Source source() {
            return Source.memory("ISO 2306");
        }
    }

    /**
     * The largest hole in the limits, which is what Whitworth and pipe tables take.
     *
     * @param most the largest minor diameter of the inside thread
     */
    record LargestInLimits(Length most) implements HoleRule {
        @Override
        public String why() {
            return "Whitworth tables take the largest drill within the limits of the nut's minor diameter";
        }

        @Override
        public String formula() {
            return "hole ≤ largest minor diameter of the inside thread";
        }

        @Override
        public String numbers(ScrewThread thread, LengthUnit unit) {
            return "hole ≤ " + LengthText.figures(most, unit);
        }

        @Override
        public Length hole(ScrewThread thread) {
            return most;
        }

        @Override
        public Source source() {
            return Source.memory("BS 1157");
        }
    }

    /** The whole depth, for power screws and sealing pipe threads. */
    record Whole() implements HoleRule {
        @Override
        public String why() {
            return "This thread keeps its whole depth: drill to the minor diameter, or under it and bore";
        }

        @Override
        public String formula() {
            return "hole = minor diameter of the inside thread";
        }

        @Override
        public String numbers(ScrewThread thread, LengthUnit unit) {
            return "hole = " + LengthText.figures(thread.minorInternal(), unit);
        }

        @Override
        public Length hole(ScrewThread thread) {
            return thread.minorInternal();
        }

        @Override
        public Source source() {
            return Source.COMMON_PRACTICE;
        }
    }
}
