package chargehand.trade.sum;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Angle;
import chargehand.measure.LengthUnit;
import chargehand.measure.Speed;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures as a person reads them. */
class FigureTextTest {
    private static final FigureText METRIC = new FigureText(LengthUnit.MILLIMETRE, false);
    private static final FigureText INCH = new FigureText(LengthUnit.INCH, false);

    /** Seconds of arc over 3600 are degrees; what rounding leaves of nought is nought. */
    @ParameterizedTest
    @CsvSource(quoteCharacter = '|', textBlock = """
                    0.0001      , 0.36"
                    -0.0002     , -0.72"
                    0.00000001  , 0°
                    0           , 0°
                    0.0005      , 0° 0' 2"
                    5.5         , 5° 30'
                    """)
    void angle_lessThanASecond_isShownInPartsOfOne(double degrees, String shown) {
        assertThat(METRIC.of(Figure.of(Angle.degrees(degrees)))).isEqualTo(shown);
    }

    @ParameterizedTest
    @CsvSource({
        "0.0508, 50.8 mm/min (2 in/min), 2 in/min (50.8 mm/min)",
        "24, 24 m/min (78.74 ft/min), 78.74 ft/min (24 m/min)"
    })
    void speed_ofAFeed_isShownAsADialHasIt(double metresPerMinute, String metric, String inch) {
        Figure speed = Figure.of(Speed.metresPerMinute(metresPerMinute));

        assertThat(METRIC.of(speed)).isEqualTo(metric);
        assertThat(INCH.of(speed)).isEqualTo(inch);
    }

    @ParameterizedTest
    @CsvSource({"848.826,849", "10.04,10", "9.55,9.6", "0.25,0.3"})
    void turnsInAMinute_areShownWholeFromTen(double turns, String shown) {
        assertThat(METRIC.of(Figure.rpm(turns))).isEqualTo(shown);
        assertThat(FigureTree.of(Figure.rpm(turns))).isEqualTo(turns);
    }

    @ParameterizedTest
    @CsvSource({"71.42857, 71.4 %", "100, 100 %", "0.04, 0 %"})
    void percent_isShownToATenth(double number, String shown) {
        assertThat(METRIC.of(Figure.percent(number))).isEqualTo(shown);
        assertThat(FigureTree.of(Figure.percent(number))).isEqualTo(number);
    }
}
