package chargehand.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Every notation of every other quantity; the figures are arithmetic on the units' definitions. */
class NotationReadTest {
    private static final double ROUNDING = 1e-9;

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            angle         | 5.5              | 5.5
            angle         | 5,5 deg          | 5.5
            angle         | 5.5°             | 5.5
            angle         | 5° 30'           | 5.5
            angle         | 5°30′15″         | 5.504166666667
            angle         | 5 deg 30 min     | 5.5
            angle         | 5° 30            | 5.5
            angle         | 14 1/2°          | 14.5
            angle         | 30'              | 0.5
            angle         | -1° 30'          | -1.5
            angle         | 0.1 rad          | 5.729577951308
            pitch         | 19 tpi           | 1.336842105263
            pitch         | 11 1/2 tpi       | 2.208695652174
            pitch         | 11.5 T.P.I.      | 2.208695652174
            pitch         | 8 threads per inch | 3.175
            pitch         | 8 threads to the inch | 3.175
            pitch         | 1.5 mm           | 1.5
            pitch         | 1,5              | 1.5
            pitch         | 1.5 mm pitch     | 1.5
            pitch         | 0.05 in          | 1.27
            pitch         | 1/8 in pitch     | 3.175
            pitch         | 1/8              | 3.175
            pitch         | 50 thou          | 1.27
            force         | 450 N            | 450
            force         | 1.2kN            | 1200
            force         | -3 kN            | -3000
            force         | 2 tonf           | 19928.033
            force         | 5 tonne          | 49033.25
            torque        | 40 Nm            | 40
            torque        | 40 N·m           | 40
            torque        | 40 N m           | 40
            torque        | 40 N.m           | 40
            torque        | 40 N*m           | 40
            torque        | 500 Nmm          | 0.5
            torque        | 500 N.mm         | 0.5
            torque        | 1 kNm            | 1000
            torque        | 10 lb-ft         | 13.558179
            torque        | 10 lbf·ft        | 13.558179
            torque        | 40 newton metres | 40
            torque        | 10 ft-lbs        | 13.558179
            torque        | 10 pound feet    | 13.558179
            torque        | 10 ft lb         | 13.558179
            torque        | 120 lbf in       | 13.558179
            pressure      | 250 MPa          | 250
            pressure      | 250 N/mm²        | 250
            pressure      | 250 N/mm^2       | 250
            pressure      | 10 bar           | 1
            pressure      | 300 kPa          | 0.3
            pressure      | 210 GPa          | 210000
            pressure      | 150 lbf/in2      | 1.034214
            pressure      | 150 lb per sq in | 1.034214
            pressure      | 150 lbs/sq.in.   | 1.034214
            pressure      | 150 pounds per square inch | 1.034214
            pressure      | 32 tonf/in²      | 494.216206
            pressure rate | 12 bar/mm        | 12
            pressure rate | 1 psi/thou       | 2.714471
            spring rate   | 3.5 N/mm         | 3.5
            spring rate   | 3.5 kN/m         | 3.5
            spring rate   | 20 lb/in         | 3.502537
            speed         | 25 m/min         | 25
            speed         | 25 m per min     | 25
            speed         | 25 metres per minute | 25
            speed         | 100 fpm          | 30.48
            speed         | 0.5 m/s          | 30
            spindle speed | 320              | 320
            spindle speed | 320 rpm          | 320
            spindle speed | 320 rev/min      | 320
            spindle speed | 2 rev/s          | 120
            power         | 1 1/2 kW         | 1500
            power         | 750 W            | 750
            power         | 2 h.p.           | 1491.399743
            mass          | 800 g            | 0.8
            mass          | 2,5 kg           | 2.5
            mass          | 5 1/2 lb         | 2.494758
            mass          | 3 t              | 3000
            temperature   | 20               | 20
            temperature   | 20 °C            | 20
            temperature   | 20℃              | 20
            temperature   | 20 deg C         | 20
            temperature   | 68 °F            | 20
            temperature   | -10              | -10
            time          | 90 s             | 90
            time          | 25 min           | 1500
            time          | 1 h 50           | 6600
            time          | 1 h 50 min       | 6600
            time          | 1h50m            | 6600
            time          | 1:50             | 6600
            time          | 0:01:30          | 90
            time          | 1.5 h            | 5400
            time          | 1 1/2 hours      | 5400
            time          | 2 min 15.5 s     | 135.5
            area          | 120              | 120
            area          | 120 mm2          | 120
            area          | 2 sq in          | 1290.32
            area          | 3 cm²            | 300
            volume        | 20 cc            | 20000
            volume        | 1.5 litres       | 1500000
            volume        | 2 cu in          | 32774.128
            number        | 0.15             | 0.15
            number        | -0.3             | -0.3
            number        | 3/4              | 0.75
            number        | 75 %             | 0.75
            number        | 2:1              | 2
            percentage    | 75               | 0.75
            percentage    | 75 %             | 0.75
            percentage    | 3/4              | 0.75
            taper         | 1 in 48          | 0.020833333333
            taper         | 1-in-48          | 0.020833333333
            taper         | 1:48             | 0.020833333333
            taper         | 1/48             | 0.020833333333
            taper         | 1 in 19.212      | 0.052050801582
            taper         | 3/4 in per ft    | 0.0625
            taper         | 3/4"/ft          | 0.0625
            taper         | .602 per foot    | 0.050166666667
            count         | 24               | 24
            count         | 24 off           | 24
            count         | 24.0             | 24
            """)
    void read_notation_isTheQuantity(String quantity, String text, double expected) {
        double printed = 1e-6 * Math.max(1, Math.abs(expected));
        assertThat(BaseNumber.read(quantity, text)).isCloseTo(expected, within(printed));
    }

    @ParameterizedTest
    @CsvSource({"area, 2, 1290.32", "volume, 2, 32774.128", "spindle speed, 320, 320", "temperature, 20, 20"})
    void read_bareNumberInAnInchShop_followsLengthsOrItsOnlyUnit(String quantity, String text, double expected) {
        assertThat(BaseNumber.read(quantity, text, LengthUnit.INCH)).isCloseTo(expected, within(ROUNDING));
    }

    @Test
    void read_pitch_staysAnExactRatio() {
        Pitch pitch = Notations.PITCH.read("11 1/2 tpi", LengthUnit.INCH);
        assertThat(pitch.tpi()).isEqualTo(BigFraction.of(23, 2));
        assertThat(Notations.PITCH.read("1/20 in", LengthUnit.INCH).tpi()).isEqualTo(BigFraction.of(20));
    }

    @Test
    void read_taper_staysAnExactRatio() {
        assertThat(Notations.TAPER.read("1 in 48", LengthUnit.INCH)).isEqualTo(Ratio.of(1, 48));
    }

    @Test
    void read_everyExampleOfferedInARefusal_isAccepted() {
        for (Notation<?> notation : AllNotations.LIST) {
            Arrays.stream(notation.examples().split(", | or ", -1))
                    .forEach(example -> assertThat(notation.read(example, LengthUnit.MILLIMETRE))
                            .as("%s: %s", notation.name(), example)
                            .isNotNull());
        }
    }
}
