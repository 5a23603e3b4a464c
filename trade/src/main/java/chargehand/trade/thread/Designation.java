package chargehand.trade.thread;

import chargehand.measure.Pitch;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.apache.commons.numbers.fraction.BigFraction;

/** The usual way to write each thread down. */
final class Designation {
    private static final MathContext DIGITS = new MathContext(8, RoundingMode.HALF_UP);

    private Designation() {}

    static String of(ScrewThread thread) {
        return single(thread) + starts(thread) + (thread.leftHand() ? " LH" : "");
    }

    private static String single(ScrewThread thread) {
        String size = thread.size();
        return switch (thread.series()) {
            case METRIC_COARSE, METRIC_FINE -> "M" + size + metricPitch(thread);
            case UNC -> size + "-" + tpi(thread) + " UNC";
            case UNF -> size + "-" + tpi(thread) + " UNF";
            case UN -> size + "-" + tpi(thread) + " UN";
            case BSW -> size + " BSW";
            case BSF -> size + " BSF";
            case WHITWORTH -> size + "-" + tpi(thread) + " Whit";
            case BSP -> "G " + size;
            case BSP_TAPER_OUTSIDE -> "R " + size;
            case BSP_TAPER_INSIDE -> "Rc " + size;
            case BSP_PARALLEL_INSIDE -> "Rp " + size;
            case BA -> size + " BA";
            case TRAPEZOIDAL -> "Tr " + size + "x" + trapezoidalPitch(thread);
            case ACME -> size + "-" + tpi(thread) + " Acme";
            case SQUARE -> size + "-" + tpi(thread) + " Square";
            case BRASS -> size + " BSB";
            case CYCLE -> size + "-" + tpi(thread) + " CEI";
            case MODEL_ENGINEER -> size + "-" + tpi(thread) + " ME";
            case CONDUIT -> size + " Conduit";
        };
    }

    private static String metricPitch(ScrewThread thread) {
        if (thread.starts() > 1) {
            return "xPh" + mm(thread.lead()) + "P" + mm(thread.pitch());
        }
        return thread.series() == ThreadSeries.METRIC_COARSE ? "" : "x" + mm(thread.pitch());
    }

    private static String trapezoidalPitch(ScrewThread thread) {
        return mm(thread.lead()) + (thread.starts() > 1 ? " (P" + mm(thread.pitch()) + ")" : "");
    }

    /** Metric and trapezoidal threads show their starts by the lead; the rest say them. */
    private static String starts(ScrewThread thread) {
        boolean byLead = thread.form() == ThreadForm.ISO_METRIC || thread.form() == ThreadForm.TRAPEZOIDAL;
        return byLead || thread.starts() == 1 ? "" : ", " + thread.starts() + " start";
    }

    private static String tpi(ScrewThread thread) {
        return decimal(thread.pitch().tpi());
    }

    private static String mm(Pitch pitch) {
        return decimal(pitch.mm());
    }

    /** A fraction as a decimal without idle noughts, to eight figures. */
    static String decimal(BigFraction value) {
        return new BigDecimal(value.getNumerator())
                .divide(new BigDecimal(value.getDenominator()), DIGITS)
                .stripTrailingZeros()
                .toPlainString();
    }
}
