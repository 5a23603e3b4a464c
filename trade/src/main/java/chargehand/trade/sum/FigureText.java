package chargehand.trade.sum;

import chargehand.measure.Angle;
import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Notations;
import chargehand.measure.Speed;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/**
 * Figures for people, rounded as the trade rounds: lengths to 0.001 in and 0.01 mm, or a figure finer where limits are
 * meant, and everything in both units with the one of the dial first.
 *
 * @param first the unit of the dial
 * @param fine whether lengths are limits
 */
public record FigureText(LengthUnit first, boolean fine) {
    private static final double SECONDS_PER_DEGREE = 3600;

    /** What rounding leaves of an angle is none. */
    private static final double LEAST_SECONDS = 0.005;

    /** Metres a minute; slower is a feed. */
    private static final double LEAST_CUTTING_SPEED = 1;

    /** Turns a minute from which parts of one are of no use. */
    private static final double WHOLE_TURNS = 10;

    private static final double MM_PER_METRE = 1000;
    private static final double INCHES_PER_FOOT = 12;
    private static final MathContext PLAIN_FIGURES = new MathContext(5, RoundingMode.HALF_UP);

    /** One figure as text; the entries of a list parted by commas, the figures of a group by their names. */
    public String of(Figure figure) {
        return switch (figure) {
            case Figure.OfLength(var length) -> of(length);
            case Figure.OfAngle(var angle) -> of(angle);
            case Figure.OfForce(var force) -> Notations.FORCE.text(force, first);
            case Figure.OfTorque(var torque) -> Notations.TORQUE.text(torque, first);
            case Figure.OfPressure(var pressure) -> Notations.PRESSURE.text(pressure, first);
            case Figure.OfPressureRate(var rate) -> Notations.PRESSURE_RATE.text(rate, first);
            case Figure.OfSpringRate(var rate) -> Notations.SPRING_RATE.text(rate, first);
            case Figure.OfSpeed(var speed) -> of(speed);
            case Figure.OfTemperature(var temperature) -> Notations.TEMPERATURE.text(temperature, first);
            case Figure.OfMass(var mass) -> Notations.MASS.text(mass, first);
            case Figure.OfPower(var power) -> Notations.POWER.text(power, first);
            case Figure.OfTime(var time) -> Notations.WORK_TIME.text(time, first);
            case Figure.OfArea(var area) -> Notations.AREA.text(area, first);
            case Figure.OfVolume(var volume) -> Notations.VOLUME.text(volume, first);
            case Figure.Count(var count) -> Long.toString(count);
            case Figure.Plain(var number) -> plain(number);
            case Figure.Percent(var number) -> Figures.atMost(1, number) + " %";
            case Figure.PerMinute(var turns) -> Figures.atMost(turns < WHOLE_TURNS ? 1 : 0, turns);
            case Figure.Words(var text) -> text;
            case Figure.YesNo(var yes) -> yes ? "yes" : "no";
            case Figure.Many(var figures) -> figures.stream().map(this::of).collect(Collectors.joining("; "));
            case Figure.Group(var figures) -> of(figures);
        };
    }

    private String of(Map<String, Figure> figures) {
        return figures.entrySet().stream()
                .map(entry -> words(entry.getKey()) + " " + of(entry.getValue()))
                .collect(Collectors.joining(", "));
    }

    private String of(Length length) {
        return fine
                ? LengthText.both(length, first)
                : coarse(length, first) + " (" + coarse(length, first.other()) + ")";
    }

    /** An angle of less than a second, such as what indexing leaves over, in parts of one. */
    private String of(Angle angle) {
        double seconds = Math.abs(angle.degrees()) * SECONDS_PER_DEGREE;
        return seconds >= LEAST_SECONDS && seconds < 1
                ? Figures.atMost(2, angle.degrees() * SECONDS_PER_DEGREE) + "\""
                : Notations.ANGLE.text(angle, first);
    }

    /** A feed, slower than any cut, as a machine's dial gives it. */
    private String of(Speed speed) {
        if (speed.metresPerMinute() >= LEAST_CUTTING_SPEED) {
            return Notations.SPEED.text(speed, first);
        }
        String metric = Figures.four(speed.metresPerMinute() * MM_PER_METRE) + " mm/min";
        String inch = Figures.four(speed.feetPerMinute() * INCHES_PER_FOOT) + " in/min";
        return first == LengthUnit.MILLIMETRE ? metric + " (" + inch + ")" : inch + " (" + metric + ")";
    }

    private static String coarse(Length length, LengthUnit unit) {
        return switch (unit) {
            case MILLIMETRE -> LengthText.mm(length, LengthText.HUNDREDTH_MM);
            case INCH -> LengthText.inches(length, LengthText.THOU);
        };
    }

    private static String plain(double number) {
        return new BigDecimal(number).round(PLAIN_FIGURES).stripTrailingZeros().toPlainString();
    }

    /** A key as words: {@code minorInternal} is shown as "minor internal". */
    public static String words(String key) {
        return key.replaceAll("(?<=[a-z0-9])(?=[A-Z])", " ").toLowerCase(Locale.ROOT);
    }
}
