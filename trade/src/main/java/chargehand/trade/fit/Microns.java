package chargehand.trade.fit;

import chargehand.measure.Length;
import java.util.Locale;

/** Deviations as the tables of limits print them: whole or half micrometres with their sign. */
final class Microns {
    private static final long NM_PER_MICRON = 1_000;

    private Microns() {}

    static Length of(double microns) {
        return new Length(Math.round(microns * NM_PER_MICRON));
    }

    static String say(Length length) {
        return plain(length) + " µm";
    }

    static String signed(Length length) {
        return (length.isPositive() ? "+" : "") + say(length);
    }

    static String plain(Length length) {
        double microns = (double) length.nanometres() / NM_PER_MICRON;
        return length.nanometres() % NM_PER_MICRON == 0
                ? Long.toString(Math.round(microns))
                : String.format(Locale.ROOT, "%.1f", microns);
    }
}
