package chargehand.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** How the other quantities are shown, and that what is shown reads back within the rounding stated. */
class NotationTextTest {
    private static final double FOUR_FIGURES = 5.1e-4;
    private static final LengthUnit MM = LengthUnit.MILLIMETRE;
    private static final LengthUnit INCH = LengthUnit.INCH;

    @Test
    void text_quantity_isInBothSystemsTheGivenOneFirst() {
        assertThat(Notations.FORCE.text(Force.newtons(450), MM)).isEqualTo("450 N (101.2 lbf)");
        assertThat(Notations.FORCE.text(Force.newtons(12_500), MM)).isEqualTo("12.5 kN (2810 lbf)");
        assertThat(Notations.TORQUE.text(Torque.poundFeet(30), INCH)).isEqualTo("30 lbf ft (40.67 N·m)");
        assertThat(Notations.PRESSURE.text(Pressure.psi(50), INCH)).isEqualTo("50 psi (3.447 bar)");
        assertThat(Notations.PRESSURE.text(Pressure.megapascals(250), MM)).isEqualTo("250 MPa (36260 psi)");
        assertThat(Notations.SPRING_RATE.text(SpringRate.newtonsPerMm(3.5), MM)).isEqualTo("3.5 N/mm (19.99 lbf/in)");
        assertThat(Notations.PRESSURE_RATE.text(PressureRate.barPerMm(12), MM)).isEqualTo("12 bar/mm (4.421 psi/thou)");
        assertThat(Notations.SPEED.text(Speed.feetPerMinute(80), INCH)).isEqualTo("80 ft/min (24.38 m/min)");
        assertThat(Notations.SPINDLE_SPEED.text(SpindleSpeed.rpm(320), MM)).isEqualTo("320 rpm");
        assertThat(Notations.POWER.text(Power.horsepower(2), MM)).isEqualTo("1491 W (2 hp)");
        assertThat(Notations.MASS.text(Mass.kilograms(2.5), MM)).isEqualTo("2.5 kg (5.512 lb)");
        assertThat(Notations.TEMPERATURE.text(Temperature.celsius(20), MM)).isEqualTo("20 °C (68 °F)");
        assertThat(Notations.AREA.text(Area.squareMm(645.16), INCH)).isEqualTo("1 in² (645.2 mm²)");
        assertThat(Notations.VOLUME.text(Volume.cubicMm(0), MM)).isEqualTo("0 mm³ (0 in³)");
    }

    @Test
    void text_pitch_isThreadsAndMillimetres() {
        assertThat(Notations.PITCH.text(Pitch.ofTpi(19), INCH)).isEqualTo("19 tpi (1.3368 mm)");
        assertThat(Notations.PITCH.text(Pitch.ofTpi("11.5"), INCH)).isEqualTo("11 1/2 tpi (2.2087 mm)");
        assertThat(Notations.PITCH.text(Pitch.ofMm("1.5"), MM)).isEqualTo("1.5 mm (16.933 tpi)");
    }

    @Test
    void text_ratios_areShownAsTheirKind() {
        assertThat(Notations.TAPER.text(Ratio.of(1, 48), MM)).isEqualTo("1 in 48");
        assertThat(Notations.TAPER.text(Ratio.of(0, 1), MM)).isEqualTo("no taper");
        assertThat(Notations.PERCENTAGE.text(Ratio.of(3, 4), MM)).isEqualTo("75 %");
        assertThat(Notations.NUMBER.text(Ratio.of(1, 3), MM)).isEqualTo("0.333333");
    }

    @Test
    void angles_areInDegreesMinutesAndSeconds() {
        assertThat(AngleText.minutes(Angle.degrees(5.5))).isEqualTo("5° 30'");
        assertThat(AngleText.minutes(Angle.degrees(30))).isEqualTo("30°");
        assertThat(AngleText.minutes(Angle.degrees(0.75))).isEqualTo("0° 45'");
        assertThat(AngleText.minutes(Angle.degrees(29.9999))).isEqualTo("30°");
        assertThat(AngleText.minutes(Angle.degrees(-1.5))).isEqualTo("-1° 30'");
        assertThat(AngleText.seconds(Angle.degrees(5.504166666667))).isEqualTo("5° 30' 15\"");
        assertThat(AngleText.seconds(Angle.degrees(5 + 15 / 3600.0))).isEqualTo("5° 0' 15\"");
        assertThat(AngleText.seconds(Angle.degrees(5.5))).isEqualTo("5° 30'");
        assertThat(AngleText.degrees(Angle.degrees(5.504166), 2)).isEqualTo("5.5°");
    }

    @Test
    void workTimes_areInHoursAndMinutes() {
        assertThat(WorkTimeText.of(WorkTime.minutes(110))).isEqualTo("1 h 50 min");
        assertThat(WorkTimeText.of(WorkTime.minutes(120))).isEqualTo("2 h");
        assertThat(WorkTimeText.of(WorkTime.seconds(25 * 60 + 20))).isEqualTo("25 min");
        assertThat(WorkTimeText.of(WorkTime.seconds(90))).isEqualTo("1 min 30 s");
        assertThat(WorkTimeText.of(WorkTime.seconds(599.7))).isEqualTo("10 min");
        assertThat(WorkTimeText.of(WorkTime.ZERO)).isEqualTo("0 s");
    }

    @Test
    void text_anyQuantity_readsBackToFourFigures() {
        readsBack(Notations.FORCE, Force::newtons, Force::newtons);
        readsBack(Notations.TORQUE, Torque::newtonMetres, Torque::newtonMetres);
        readsBack(Notations.PRESSURE, Pressure::megapascals, Pressure::megapascals);
        readsBack(Notations.PRESSURE_RATE, PressureRate::barPerMm, PressureRate::barPerMm);
        readsBack(Notations.SPRING_RATE, SpringRate::newtonsPerMm, SpringRate::newtonsPerMm);
        readsBack(Notations.SPEED, Speed::metresPerMinute, Speed::metresPerMinute);
        readsBack(Notations.SPINDLE_SPEED, SpindleSpeed::rpm, SpindleSpeed::rpm);
        readsBack(Notations.POWER, Power::watts, Power::watts);
        readsBack(Notations.MASS, Mass::kilograms, Mass::kilograms);
        readsBack(Notations.AREA, Area::squareMm, Area::squareMm);
        readsBack(Notations.VOLUME, Volume::cubicMm, Volume::cubicMm);
    }

    @Test
    void text_anyAngle_readsBackToHalfASecond() {
        var random = new Random(21);
        for (int i = 0; i < 2_000; i++) {
            Angle angle = Angle.degrees(random.nextDouble(-400, 400));
            double again = Notations.ANGLE.read(AngleText.seconds(angle), MM).degrees();
            assertThat(again).isCloseTo(angle.degrees(), within(0.51 / 3600));
            double minutes = Notations.ANGLE.read(AngleText.minutes(angle), MM).degrees();
            assertThat(minutes).isCloseTo(angle.degrees(), within(0.501 / 60));
        }
    }

    @Test
    void text_anyWorkTime_readsBackToHalfTheLastUnit() {
        var random = new Random(22);
        for (int i = 0; i < 2_000; i++) {
            double seconds = Math.pow(10, random.nextDouble(5.5));
            double again = Notations.WORK_TIME
                    .read(WorkTimeText.of(WorkTime.seconds(seconds)), MM)
                    .seconds();
            assertThat(again).isCloseTo(seconds, within(seconds < 600 ? 0.5 : 30.5));
        }
    }

    /** Shows random quantities in each system and reads the first half, before the bracket, back. */
    private static <Q> void readsBack(Notation<Q> notation, DoubleFunction<Q> of, ToDoubleFunction<Q> in) {
        var random = new Random(23);
        for (int i = 0; i < 500; i++) {
            double number = Math.pow(10, random.nextDouble(-3, 9));
            for (LengthUnit first : LengthUnit.values()) {
                String text = notation.text(of.apply(number), first);
                String half = text.replaceFirst(" \\(.*", "");
                assertThat(in.applyAsDouble(notation.read(half, first)))
                        .as(text)
                        .isCloseTo(number, within(FOUR_FIGURES * number));
            }
        }
    }
}
