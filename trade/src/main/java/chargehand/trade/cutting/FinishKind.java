package chargehand.trade.cutting;

import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Kind;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A finish as a drawing gives it, Ra in micrometres or microinches: {@code 1.6}, {@code Ra 3.2 µm}, {@code 63 µin}. */
record FinishKind() implements Kind<Length> {
    private static final Pattern WRITTEN = Pattern.compile(
            "(?:ra)?\\s*(\\d{1,4}(?:[.,]\\d{1,4})?)\\s*(µm|μm|um|microns?|µin|μin|uin)?", Pattern.CASE_INSENSITIVE);
    private static final double FINEST_MICRONS = 0.1;
    private static final double COARSEST_MICRONS = 50;
    private static final double MICRONS_IN_MICROINCH = 0.0254;
    private static final double MM_IN_MICRON = 0.001;

    @Override
    public String name() {
        return "finish, Ra";
    }

    @Override
    public Length read(String written, LengthUnit unit) {
        Matcher matcher = WRITTEN.matcher(written.trim());
        if (!matcher.matches()) {
            throw new Unreadable("this is no finish: write Ra in micrometres, such as 1.6.");
        }
        String mark = matcher.group(2);
        double number = Double.parseDouble(matcher.group(1).replace(',', '.'));
        double microns =
                mark != null && mark.toLowerCase(Locale.ROOT).endsWith("in") ? number * MICRONS_IN_MICROINCH : number;
        if (microns < FINEST_MICRONS || microns > COARSEST_MICRONS) {
            throw new Unreadable("a cut finish lies between Ra 0.1 and 50 µm.");
        }
        return Length.mm(microns * MM_IN_MICRON);
    }

    @Override
    public String echo(Length finish) {
        return say(finish);
    }

    static String say(Length finish) {
        return "Ra " + Figures.four(finish.mm() / MM_IN_MICRON) + " µm";
    }
}
