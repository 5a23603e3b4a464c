package chargehand.trade.pin;

import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Source;
import chargehand.trade.table.Table;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A pin as it is called: a diameter, or the number of an imperial taper pin, which tells its large end.
 *
 * @param diameter the size it is named by
 * @param number of a taper pin, if it was named so
 */
record PinSize(Length diameter, Optional<String> number) {
    private static final Table NUMBERS = Table.read(PinSize.class, "taper-pins.csv");
    private static final Pattern NUMBERED = Pattern.compile("(?:no\\.?|number|#)\\s*(\\d{1,2}(?:/0)?)");
    private static final Length LARGEST = Length.mm(200);
    private static final Length SMALLEST = Length.mm(0.3);

    static final Kind<PinSize> KIND = new Reading();

    static Source source() {
        return NUMBERS.source();
    }

    private record Reading() implements Kind<PinSize> {
        @Override
        public String name() {
            return "size of a pin";
        }

        @Override
        public PinSize read(String written, LengthUnit unit) {
            Matcher numbered = NUMBERED.matcher(written.trim().toLowerCase(Locale.ROOT));
            if (numbered.matches()) {
                return ofNumber(numbered.group(1));
            }
            Length size = LengthReader.read(written, unit).length();
            if (size.isLessThan(SMALLEST) || size.isMoreThan(LARGEST)) {
                throw new Unreadable("a pin lies between 0.3 and 200 mm.");
            }
            return new PinSize(size, Optional.empty());
        }

        private static PinSize ofNumber(String number) {
            return NUMBERS.rows().stream()
                    .filter(row -> row.text("number").equals(number))
                    .findFirst()
                    .map(row -> new PinSize(Length.in(row.number("large")), Optional.of(number)))
                    .orElseThrow(() -> new Unreadable("taper pins are numbered 7/0 to 0 and 1 to 14."));
        }

        @Override
        public String echo(PinSize size) {
            return echo(size, LengthUnit.MILLIMETRE);
        }

        @Override
        public String echo(PinSize size, LengthUnit first) {
            return size.number().map(number -> "No. " + number + ", ").orElse("")
                    + LengthText.both(size.diameter(), first);
        }
    }
}
