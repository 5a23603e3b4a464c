package chargehand.trade.taper;

import chargehand.measure.Figures;
import chargehand.measure.LengthUnit;
import chargehand.measure.Notations;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import java.util.regex.Pattern;

/** The kinds of field that hold a taper. */
final class TaperKinds {
    /** A taper on diameter: {@code 1 in 48}; a bare number above one, 48, is taken as one in that. */
    static final Kind<Taper> RATIO = new OneIn();

    /** A machine taper by its name. */
    static final Kind<StandardTaper> STANDARD = Kinds.by("machine taper", StandardTapers::get, StandardTaper::name);

    private TaperKinds() {}

    private record OneIn() implements Kind<Taper> {
        private static final Pattern BARE = Pattern.compile("\\d{1,7}([.,]\\d{1,7})?");
        private static final double LEAST_BARE = 1;
        private static final int DECIMALS = 3;

        @Override
        public String name() {
            return "taper";
        }

        @Override
        public Taper read(String written, LengthUnit unit) {
            double rate = BARE.matcher(written).matches()
                    ? ofBare(written)
                    : Notations.TAPER.read(written, unit).value();
            if (!Taper.isPossible(rate)) {
                throw new Unreadable("'" + written + "' is not a taper that can be made: write 1 in 48, say.");
            }
            return new Taper(rate);
        }

        private static double ofBare(String written) {
            double length = Double.parseDouble(written.replace(',', '.'));
            if (length <= LEAST_BARE) {
                throw new Unreadable("'" + written + "' could mean two things: write the taper as 1 in 48.");
            }
            return 1 / length;
        }

        @Override
        public String echo(Taper taper) {
            return "1 in " + Figures.atMost(DECIMALS, taper.oneIn());
        }
    }
}
