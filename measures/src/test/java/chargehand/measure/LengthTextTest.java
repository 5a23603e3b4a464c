package chargehand.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import org.junit.jupiter.api.Test;

/** How lengths are written for people (common practice of British and American shop drawings). */
class LengthTextTest {
    private static final Length THIRTEEN_SIXTEENTHS = Length.inch(13, 16);

    @Test
    void inches_fixedDecimals_haveNoLeadingNought() {
        assertThat(LengthText.inches(THIRTEEN_SIXTEENTHS, LengthText.TENTH_OF_A_THOU))
                .isEqualTo(".8125 in");
        assertThat(LengthText.inches(THIRTEEN_SIXTEENTHS, LengthText.THOU)).isEqualTo(".813 in");
        assertThat(LengthText.inches(Length.in(-0.5), LengthText.THOU)).isEqualTo("-.500 in");
        assertThat(LengthText.inches(Length.in(10), LengthText.THOU)).isEqualTo("10.000 in");
    }

    @Test
    void mm_decimals_haveALeadingNoughtAndNoNeedlessOnes() {
        assertThat(LengthText.mm(THIRTEEN_SIXTEENTHS, LengthText.HUNDREDTH_MM)).isEqualTo("20.64 mm");
        assertThat(LengthText.mm(Length.mm(0.5), LengthText.MICROMETRE)).isEqualTo("0.5 mm");
        assertThat(LengthText.mm(Length.mm(-0.02), LengthText.MICROMETRE)).isEqualTo("-0.02 mm");
        assertThat(LengthText.mm(Length.mm(100), LengthText.MICROMETRE)).isEqualTo("100 mm");
    }

    @Test
    void rounding_halves_goAwayFromNought() {
        assertThat(LengthText.mm(Length.mm(0.125), 2)).isEqualTo("0.13 mm");
        assertThat(LengthText.mm(Length.mm(-0.125), 2)).isEqualTo("-0.13 mm");
        assertThat(LengthText.mm(Length.mm(-0.001), 2)).isEqualTo("0 mm");
    }

    @Test
    void fraction_sixtyFourths_areReduced() {
        assertThat(LengthText.fraction(THIRTEEN_SIXTEENTHS)).contains("13/16 in");
        assertThat(LengthText.fraction(Length.inch(11, 8))).contains("1 3/8 in");
        assertThat(LengthText.fraction(Length.inch(-1, 64))).contains("-1/64 in");
        assertThat(LengthText.fraction(Length.in(2))).contains("2 in");
        assertThat(LengthText.fraction(Length.mm(20))).isEmpty();
    }

    @Test
    void nearest64_offTheFraction_saysByHowMuch() {
        assertThat(Nearest64.of(Length.in(0.8128)).text()).isEqualTo("13/16 in + .0003");
        assertThat(Nearest64.of(Length.mm(20)).text()).isEqualTo("25/32 in + .0062");
        assertThat(Nearest64.of(Length.mm(20.6)).text()).isEqualTo("13/16 in - .0015");
        assertThat(Nearest64.of(Length.mm(20.6)).off()).isEqualTo(Length.mm(-0.0375));
    }

    @Test
    void thou_length_isInThousandths() {
        assertThat(LengthText.thou(Length.thou(5))).isEqualTo("5 thou");
        assertThat(LengthText.thou(Length.in(0.0025))).isEqualTo("2.5 thou");
        assertThat(LengthText.thou(Length.mm(1))).isEqualTo("39.4 thou");
    }

    @Test
    void both_eitherFirst_showsTheOtherInBrackets() {
        Length length = Length.inch(11, 8);
        assertThat(LengthText.both(length, LengthUnit.INCH)).isEqualTo("1.375 in (34.925 mm)");
        assertThat(LengthText.both(length, LengthUnit.MILLIMETRE)).isEqualTo("34.925 mm (1.375 in)");
        assertThat(LengthText.both(THIRTEEN_SIXTEENTHS, LengthUnit.INCH)).isEqualTo(".8125 in (20.638 mm)");
        assertThat(LengthText.both(Length.ZERO, LengthUnit.INCH)).isEqualTo("0 in (0 mm)");
    }

    @Test
    void signed_deviation_hasNoSignOnNought() {
        assertThat(LengthText.signed(Length.mm(0.021), LengthUnit.MILLIMETRE)).isEqualTo("+0.021 mm");
        assertThat(LengthText.signed(Length.in(-0.0005), LengthUnit.INCH)).isEqualTo("-.0005 in");
        assertThat(LengthText.signed(Length.ZERO, LengthUnit.INCH)).isEqualTo("0 in");
    }

    @Test
    void inches_tooManyDecimals_isTheCallersMistake() {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> LengthText.inches(Length.ZERO, 13))
                .withMessageContaining("13");
    }
}
