package chargehand.part.testing;

import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthUnit;
import chargehand.measure.Nearest64;
import chargehand.measure.Written;
import chargehand.part.Size;
import chargehand.part.Tolerance;
import chargehand.trade.fit.Iso286;
import chargehand.trade.fit.ToleranceZone;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/** Random sizes on the steps a draughtsman uses: half millimetres, sixteenths, thousandths. */
final class Sizes {
    private static final List<String> SHAFT = List.of("h6", "h7", "h9", "f7", "g6", "k6", "p6", "h11");
    private static final List<String> HOLE = List.of("H7", "H8", "F7", "H9");

    private final Random random;
    private final LengthUnit unit;

    Sizes(Random random, LengthUnit unit) {
        this.random = random;
        this.unit = unit;
    }

    LengthUnit unit() {
        return unit;
    }

    Written written(String text) {
        return LengthReader.read(text, unit);
    }

    /** The size on the steps of the unit that is nearest to so many millimetres, a step at least. */
    Written near(double mm) {
        return switch (unit) {
            case MILLIMETRE -> written(mmText(mm));
            case INCH -> written(inchText(mm));
        };
    }

    private static String mmText(double mm) {
        long halves = Math.max(1, Math.round(mm * 2));
        return halves % 2 == 0 ? Long.toString(halves / 2) : halves / 2 + ".5";
    }

    private String inchText(double mm) {
        Length near = Length.mm(mm);
        long sixteenths = Math.max(1, Math.round(near.in() * 16));
        return random.nextInt(3) == 0
                ? String.format(Locale.ROOT, "%.3f", Math.max(0.01, near.in())).replaceFirst("^0", "")
                : Nearest64.of(Length.inch(sixteenths, 16)).text();
    }

    Size plain(double mm) {
        return Size.general(near(mm));
    }

    Size length(double mm) {
        Written near = near(mm);
        return switch (random.nextInt(6)) {
            case 0 -> new Size(near, new Tolerance.Deviations(fine().negated(), fine()));
            case 1 -> new Size(near, new Tolerance.Bracketed());
            default -> Size.general(near);
        };
    }

    Size shaft(double mm) {
        return diameter(mm, SHAFT);
    }

    Size hole(double mm) {
        return diameter(mm, HOLE);
    }

    private Size diameter(double mm, List<String> letters) {
        Written near = near(mm);
        return switch (random.nextInt(4)) {
            case 0 -> new Size(near, new Tolerance.Deviations(fine().negated(), Length.ZERO));
            case 1 -> lettered(near, letters.get(random.nextInt(letters.size())));
            default -> Size.general(near);
        };
    }

    private static Size lettered(Written nominal, String code) {
        ToleranceZone zone = Iso286.limits(nominal.length(), code);
        return new Size(nominal, new Tolerance.Letters(code, zone.lower(), zone.upper()));
    }

    /** A deviation on the fine steps of the unit. */
    Length fine() {
        return written(fineText()).length();
    }

    String fineText() {
        return switch (unit) {
            case MILLIMETRE -> "0.05";
            case INCH -> ".002";
        };
    }
}
