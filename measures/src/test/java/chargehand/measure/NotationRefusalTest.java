package chargehand.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What is refused, and that the sentence names what was found and what would do. */
class NotationRefusalTest {
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', textBlock = """
            force         | 450        | '450' needs its unit to be a force | 450 N, 1.2 kN or 100 lbf
            force         | lots       | 'lots' is not a force    | 450 N
            force         | 5 Nm       | 'Nm' after the number    | N, kN, lbf, tonf, kgf
            force         | 5 lb 3 oz  | 'lb 3 oz' after the number | lbf
            torque        | 40         | needs its unit           | 40 N·m
            torque        | 40 N       | 'N' after the number     | lbf ft
            pressure      | 150        | needs its unit           | 150 psi, 10 bar
            pressure      | 150 bars per mm | after the number    | bar, MPa, psi
            speed         | 25         | needs its unit           | 25 m/min
            speed         | -25 m/min  | less than a speed can be | 0 m/min or more
            mass          | -2 kg      | less than a mass can be  | 0 kg or more
            temperature   | -300       | less than a temperature  | -273.2 °C or more
            temperature   | warm       | is not a temperature     | 20 °C
            spindle speed | -5         | less than a spindle speed | 0 rpm
            power         | 2 horses   | 'horses'                 | W, kW, hp, PS
            force         | 999999999999 tonf | far too much for a force | its unit
            pitch         | 0 tpi      | more than nought         | no pitch
            pitch         | 1/100000 mm | no pitch that can be cut | 0.001 mm
            pitch         | 8 teeth    | 'teeth'                  | tpi, mm
            angle         | 5° 75'     | is not an angle          | 5° 30'
            angle         | 5.5° 30'   | is not an angle          | 5° 30'
            angle         | 5 30             | is not an angle          | 5° 30'
            angle         | 30' 5°     | is not an angle          | 5° 30'
            angle         | 400000     | far too much for an angle | check the figure
            angle         | 5 grads    | 'grads'                  | 0.1 rad
            angle         | steep      | 'steep' is not an angle  | 5.5
            time          | 25         | needs its unit to be a time | 25 min
            time          | 1:75       | is not a time            | 1 h 50
            time          | 1.5:30     | is not a time            | 1:50
            time          | 1 h 90     | is not a time            | 1 h 50
            time          | 2 days     | 'days'                   | 90 s
            time          | 1 h 1/2    | needs its unit to be a time | 1 h 50
            time          | -5 min     | is not a time            | 90 s
            area          | -3         | less than an area can be | 0 mm²
            area          | 3 mm       | 'mm'                     | mm², in²
            number        | 75 mm      | 'mm' after what reads as | 0.75
            number        | 1:0        | is not a number          | 2:1
            percentage    | 1,250      | could be 1.250 or 1250   | decimal point
            taper         | 0.05       | is not a taper           | 1 in 48
            taper         | 1 in       | is not a taper           | 1:48
            taper         | 1 in 0     | is not a taper           | 1 in 48
            count         | 2.5        | is not a whole number    | from 0 to 10000
            count         | -1         | will not do here         | from 0 to 10000
            count         | 10001      | will not do here         | from 0 to 10000
            count         | 999999999999999 | will not do here    | from 0 to 10000
            count         | three      | is not a whole number    | from 0 to 10000
            """)
    void read_nonsense_saysWhatWasFoundAndWhatWouldDo(String quantity, String text, String found, String would) {
        assertThat(refusal(quantity, text, LengthUnit.MILLIMETRE))
                .contains(found)
                .contains(would)
                .endsWith(".");
    }

    @ParameterizedTest
    @CsvSource({"19", "0.05", "11 1/2"})
    void read_bareInchPitch_asksForThreadsOrPitch(String text) {
        assertThat(refusal("pitch", text, LengthUnit.INCH))
                .contains("could be " + text + " threads to the inch or a pitch of " + text + " in")
                .contains("write " + text + " tpi or " + text + " in");
    }

    @ParameterizedTest
    @CsvSource({"force", "angle", "pitch", "time", "number", "count", "length", "temperature"})
    void read_nothing_saysWhatIsNeeded(String quantity) {
        assertThat(refusal(quantity, "  ", LengthUnit.INCH))
                .startsWith("Nothing is written here: a")
                .endsWith(" is needed.");
    }

    private static String refusal(String quantity, String text, LengthUnit unit) {
        var refused = catchThrowableOfType(Unreadable.class, () -> BaseNumber.read(quantity, text, unit));
        assertThat(refused).as("'%s' is refused", text).isNotNull();
        return refused.say();
    }
}
