package chargehand.measure;

import static org.assertj.core.api.Assertions.assertThat;

import java.math.RoundingMode;
import java.util.Random;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;

/** Whatever is written reads back as the same length, in every notation; seeded random lengths. */
class LengthRoundTripTest {
    private static final int TRIES = 2_000;
    private static final long NM_PER_64TH = Length.NM_PER_INCH / 64;

    @Test
    void exact_anyLengthInEitherUnit_readsBackToTheNanometre() {
        everyLength(1, length -> {
            for (LengthUnit unit : LengthUnit.values()) {
                assertThat(read(LengthText.exact(length, unit))).isEqualTo(length);
            }
        });
    }

    @Test
    void exact_decimalCommaOrBareNumber_readsBackAlike() {
        everyLength(2, length -> {
            String figures = LengthText.rounded(length, LengthUnit.MILLIMETRE, 6, RoundingMode.UNNECESSARY)
                    .toPlainString();
            assertThat(LengthReader.read(figures, LengthUnit.MILLIMETRE).length())
                    .isEqualTo(length);
            assertThat(read(figures.replace('.', ',') + " mm")).isEqualTo(length);
        });
    }

    @Test
    void fraction_anySixtyFourth_readsBackExactly() {
        var random = new Random(3);
        for (int i = 0; i < TRIES; i++) {
            var length = new Length((random.nextInt(20_000) - 10_000) * NM_PER_64TH);
            String text = LengthText.fraction(length).orElseThrow();
            assertThat(read(text)).as(text).isEqualTo(length);
            String hyphen = text.replaceFirst("(\\d) (\\d)", "$1-$2").replace(" in", "\"");
            assertThat(read(hyphen)).as(hyphen).isEqualTo(length);
        }
    }

    @Test
    void feetAndInches_anySixtyFourth_readBackExactly() {
        var random = new Random(4);
        for (int i = 0; i < TRIES; i++) {
            long feet = random.nextInt(3_000);
            var inches = new Length(random.nextInt(12 * 64) * NM_PER_64TH);
            Length whole = new Length(feet * 12 * Length.NM_PER_INCH).plus(inches);
            String fraction = Nearest64.of(inches).fraction();
            assertThat(read(feet + " ft " + fraction + " in")).isEqualTo(whole);
            assertThat(read(feet + "'-" + fraction + "\"")).isEqualTo(whole);
        }
    }

    @Test
    void thou_wholeTenths_readBackExactly() {
        var random = new Random(5);
        for (int i = 0; i < TRIES; i++) {
            var length = new Length((random.nextInt(200_000) - 100_000) * 2_540L);
            assertThat(read(LengthText.thou(length))).isEqualTo(length);
        }
    }

    @Test
    void nearest64_anyLength_readsBackToATenthOfAThou() {
        everyLength(6, length -> {
            Nearest64 nearest = Nearest64.of(length);
            assertThat(Math.abs(nearest.off().nanometres())).isLessThanOrEqualTo(NM_PER_64TH / 2 + 1);
            assertThat(read(nearest.text()).isWithin(Length.thou(0.05), length))
                    .as(nearest.text())
                    .isTrue();
        });
    }

    @Test
    void both_eachHalf_isWithinHalfItsLastFigure() {
        everyLength(7, length -> {
            String both = LengthText.both(length, LengthUnit.INCH);
            int bracket = both.indexOf('(');
            assertThat(read(both.substring(0, bracket)).isWithin(Length.thou(0.05), length))
                    .isTrue();
            String millimetres = both.substring(bracket + 1, both.length() - 1);
            assertThat(read(millimetres).isWithin(Length.mm(0.0005), length)).isTrue();
        });
    }

    private static void everyLength(long seed, Consumer<Length> check) {
        var random = new Random(seed);
        for (int i = 0; i < TRIES; i++) {
            long most = (long) Math.pow(10, 2 + random.nextInt(11));
            check.accept(new Length(random.nextLong(-most, most + 1)));
        }
    }

    private static Length read(String text) {
        return LengthReader.read(text, LengthUnit.MILLIMETRE).length();
    }
}
