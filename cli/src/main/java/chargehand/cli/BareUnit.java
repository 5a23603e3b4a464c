package chargehand.cli;

import chargehand.measure.LengthUnit;
import java.util.Locale;

/** The option that says which unit bare numbers are in. */
final class BareUnit {
    static final Option OPTION =
            Option.valued("--unit", "UNIT", "The unit of a bare number: mm (taken when this is left out) or in.");

    private BareUnit() {}

    static LengthUnit of(Given given) {
        return given.find(OPTION.name()).map(BareUnit::read).orElse(LengthUnit.MILLIMETRE);
    }

    static LengthUnit read(String written) {
        return switch (written.strip().toLowerCase(Locale.ROOT)) {
            case "mm" -> LengthUnit.MILLIMETRE;
            case "in", "inch", "inches" -> LengthUnit.INCH;
            default -> throw new AskedWrongly("'" + written + "' is not a unit for bare numbers: write mm or in.");
        };
    }
}
