package chargehand.trade.sum;

import chargehand.measure.Angle;
import chargehand.measure.Area;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Mass;
import chargehand.measure.Notation;
import chargehand.measure.Notations;
import chargehand.measure.Pitch;
import chargehand.measure.Power;
import chargehand.measure.Pressure;
import chargehand.measure.PressureRate;
import chargehand.measure.Ratio;
import chargehand.measure.Speed;
import chargehand.measure.SpindleSpeed;
import chargehand.measure.SpringRate;
import chargehand.measure.Temperature;
import chargehand.measure.Torque;
import chargehand.measure.Unreadable;
import chargehand.measure.Volume;
import chargehand.measure.WorkTime;
import chargehand.measure.Written;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.Predicate;

/** The kinds of field that sums ask for. A subject adds its own (a thread, a material) beside its types. */
public final class Kinds {
    /** A length of either sign, such as a deviation. */
    public static final Kind<Length> LENGTH = new LengthKind(Notations.LENGTH);

    /** A length of more than nothing. */
    public static final Kind<Length> SIZE = where(LENGTH, Length::isPositive, "must be more than nothing");

    /** The largest size of anything that a shop can hold. */
    public static final Length MOST_WORK = Length.mm(100_000);

    /** A size of something that a shop can hold: more than nothing, at most 100 m. */
    public static final Kind<Length> WORK_SIZE =
            where(SIZE, size -> !size.isMoreThan(MOST_WORK), "is larger than anything a shop can hold");

    /** A size together with the words and the unit it was written in. */
    public static final Kind<Written> WRITTEN_SIZE =
            where(of(Notations.LENGTH), written -> written.length().isPositive(), "must be more than nothing");

    public static final Kind<Angle> ANGLE = of(Notations.ANGLE);
    public static final Kind<Pitch> PITCH = of(Notations.PITCH);
    public static final Kind<Force> FORCE = of(Notations.FORCE);
    public static final Kind<Torque> TORQUE = of(Notations.TORQUE);
    public static final Kind<Pressure> PRESSURE = of(Notations.PRESSURE);
    public static final Kind<PressureRate> PRESSURE_RATE = of(Notations.PRESSURE_RATE);
    public static final Kind<SpringRate> SPRING_RATE = of(Notations.SPRING_RATE);
    public static final Kind<Speed> SPEED = of(Notations.SPEED);
    public static final Kind<SpindleSpeed> SPINDLE_SPEED = of(Notations.SPINDLE_SPEED);
    public static final Kind<Power> POWER = of(Notations.POWER);
    public static final Kind<Mass> MASS = of(Notations.MASS);
    public static final Kind<Temperature> TEMPERATURE = of(Notations.TEMPERATURE);
    public static final Kind<WorkTime> TIME = of(Notations.WORK_TIME);
    public static final Kind<Area> AREA = of(Notations.AREA);
    public static final Kind<Volume> VOLUME = of(Notations.VOLUME);

    /** A plain number or a ratio: 0.15, 3/4, 2:1, 75 %. */
    public static final Kind<Ratio> NUMBER = of(Notations.NUMBER);

    /** A percentage, kept as a ratio: 75 and 75 % are both 0.75. */
    public static final Kind<Ratio> PERCENT = of(Notations.PERCENTAGE);

    /** A taper on diameter: 1 in 48. */
    public static final Kind<Ratio> TAPER = of(Notations.TAPER);

    /** Any words. */
    public static final Kind<String> TEXT = by("words", Function.identity(), Function.identity());

    public static final Kind<Boolean> YES_NO = choice("yes or no", yesAndNo());

    private Kinds() {}

    private static Map<String, Boolean> yesAndNo() {
        var words = new LinkedHashMap<String, Boolean>();
        List.of("yes", "y", "true").forEach(word -> words.put(word, true));
        List.of("no", "n", "false").forEach(word -> words.put(word, false));
        return words;
    }

    /** A whole number within the bounds, both included. */
    public static Kind<Integer> count(int least, int most) {
        return of(Notations.count(least, most));
    }

    /**
     * One of some words, read whatever their capitals. Several words may stand for one value; the first of them, in the
     * order of the map, is the one said back.
     *
     * @param words each in small letters; a map that keeps its order where several stand for one value
     */
    public static <T> Kind<T> choice(String name, Map<String, T> words) {
        return new Choice<>(name, words);
    }

    /** Several of a kind, parted by commas, or by semicolons where the entries have commas in them. */
    public static <T> Kind<List<T>> listOf(Kind<T> entry, int most) {
        return new ListOf<>(entry, most);
    }

    /**
     * Several values together: one reading of a list, one length of stock. Written short, each value behind the mark of its
     * column, or by name with bars between ({@code length=610 mm | count=10}); streams may give an object.
     */
    public static Kind<Entry> entry(String name, Column<?>... columns) {
        return new EntryKind(name, List.of(columns));
    }

    /** The kind, refusing what does not hold: "'-3 mm' must be more than nothing." */
    public static <T> Kind<T> where(Kind<T> kind, Predicate<T> holds, String otherwise) {
        return new Where<>(kind, holds, otherwise);
    }

    /** A quantity read and shown by its notation. */
    public static <Q> Kind<Q> of(Notation<Q> notation) {
        return new Noted<>(notation);
    }

    /** Something looked up or read by its own reader, which refuses with {@link Unreadable}. */
    public static <T> Kind<T> by(String name, Function<String, T> reader, Function<T, String> echo) {
        return new By<>(name, reader, echo);
    }

    private record By<T>(String name, Function<String, T> reader, Function<T, String> shown) implements Kind<T> {
        @Override
        public T read(String written, LengthUnit unit) {
            return reader.apply(written);
        }

        @Override
        public String echo(T value) {
            return shown.apply(value);
        }
    }

    private record Noted<Q>(Notation<Q> notation) implements Kind<Q> {
        @Override
        public String name() {
            return notation.name();
        }

        @Override
        public Q read(String written, LengthUnit unit) {
            return notation.read(written, unit);
        }

        @Override
        public String echo(Q value) {
            return echo(value, LengthUnit.MILLIMETRE);
        }

        @Override
        public String echo(Q value, LengthUnit first) {
            return notation.text(value, first);
        }
    }

    private record LengthKind(Notation<Written> notation) implements Kind<Length> {
        @Override
        public String name() {
            return notation.name();
        }

        @Override
        public Length read(String written, LengthUnit unit) {
            return notation.read(written, unit).length();
        }

        @Override
        public String echo(Length value) {
            return echo(value, LengthUnit.MILLIMETRE);
        }

        @Override
        public String echo(Length value, LengthUnit first) {
            return LengthText.both(value, first);
        }
    }

    private record Where<T>(Kind<T> kind, Predicate<T> holds, String otherwise) implements Kind<T> {
        @Override
        public String name() {
            return kind.name();
        }

        @Override
        public T read(String written, LengthUnit unit) {
            T value = kind.read(written, unit);
            if (!holds.test(value)) {
                throw new Unreadable("'" + written + "' " + otherwise + ".");
            }
            return value;
        }

        @Override
        public String echo(T value) {
            return kind.echo(value);
        }

        @Override
        public String echo(T value, LengthUnit first) {
            return kind.echo(value, first);
        }
    }
}
