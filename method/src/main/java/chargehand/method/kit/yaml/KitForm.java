package chargehand.method.kit.yaml;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Limits;
import chargehand.measure.Notation;
import chargehand.measure.Notations;
import chargehand.measure.Pitch;
import chargehand.measure.Power;
import chargehand.measure.SpindleSpeed;
import chargehand.measure.Unreadable;
import chargehand.method.kit.Feeds;
import chargehand.method.kit.Speeds;
import chargehand.part.yaml.tree.Form;
import chargehand.part.yaml.tree.ReadingFault;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.apache.commons.numbers.fraction.BigFraction;

/** A group of keys of a kit file, read by what kit files hold: spans, counts, lists of speeds. */
final class KitForm {
    private static final Length STAND_IN = Length.mm(1);
    private static final Limits STAND_IN_SPAN = new Limits(STAND_IN, STAND_IN);
    private static final double MOST_RPM = 50_000;
    private static final int MOST_LISTED = 500;

    private final Form form;

    KitForm(Form form) {
        this.form = form;
    }

    Form keys() {
        return form;
    }

    /** The same keys with bare numbers in the unit named among them, if one is. */
    KitForm inOwnUnit() {
        LengthUnit unit = form.find("unit", KitText::unit).orElse(unit());
        KitForm same = new KitForm(form.withBareUnit(unit));
        same.form.know(List.of("unit"));
        return same;
    }

    LengthUnit unit() {
        return form.bareUnit();
    }

    String name() {
        return form.text("name");
    }

    /** The key of these that says what kind of thing is described and holds its name; empty where it is refused. */
    String kind(List<String> kinds, List<String> otherKeys) {
        List<String> all = Stream.concat(kinds.stream(), otherKeys.stream()).toList();
        return form.oneOf(kinds, all).orElse("");
    }

    /** The name under the key that says what kind of thing is described. */
    String nameOf(String kind) {
        return form.text(kind);
    }

    /** A length of more than nothing that must be there. */
    Length length(String key) {
        return form.value(key, text -> KitText.positive(text, unit()).length(), STAND_IN);
    }

    /** A length of more than nothing that may be there. */
    Optional<Length> findLength(String key) {
        return form.find(key, text -> KitText.positive(text, unit()).length());
    }

    /** A length of nothing or more that must be there. */
    Length lengthOrNone(String key) {
        return form.value(key, text -> KitText.notNegative(text, unit()), STAND_IN);
    }

    Limits span(String key) {
        return form.value(key, text -> KitText.span(text, unit()), STAND_IN_SPAN);
    }

    Optional<Limits> findSpan(String key) {
        return form.find(key, text -> KitText.span(text, unit()));
    }

    Limits pitches(String key) {
        return form.value(key, text -> KitText.pitches(text, unit()), STAND_IN_SPAN);
    }

    int count(String key, int least, int most) {
        return form.value(key, read(Notations.count(least, most)), least);
    }

    /** One of an enum's words; the first of them stands in when it is refused. */
    <E extends Enum<E>> E word(String key, Class<E> type) {
        return form.value(key, text -> KitText.word(text, type), type.getEnumConstants()[0]);
    }

    <E extends Enum<E>> E word(String key, E whenNotSaid) {
        return form.find(key, text -> KitText.word(text, whenNotSaid.getDeclaringClass()))
                .orElse(whenNotSaid);
    }

    boolean yes(String key) {
        return form.find(key, KitText::yes).orElse(false);
    }

    Pitch pitch(String key) {
        return form.value(key, read(Notations.PITCH), Pitch.ofTpi(8));
    }

    Power power() {
        return form.value("power", text -> power(text), Power.watts(1));
    }

    private Power power(String text) {
        Power power = Notations.POWER.read(text, unit());
        if (power.watts() <= 0) {
            throw new Unreadable(KitText.quoted(text) + " will not do here: it must be more than nought.");
        }
        return power;
    }

    Angle angle(String key) {
        return form.value(key, this::cuttingAngle, Angle.degrees(60));
    }

    private Angle cuttingAngle(String text) {
        Angle angle = Notations.ANGLE.read(text, unit());
        if (!(angle.degrees() > 0 && angle.degrees() < 180)) {
            throw new Unreadable(KitText.quoted(text) + " will not do here: it lies between 0° and 180°.");
        }
        return angle;
    }

    BigFraction ratio(String key) {
        return form.value(key, this::positiveRatio, BigFraction.ONE);
    }

    Optional<BigFraction> findRatio(String key) {
        return form.find(key, this::positiveRatio);
    }

    private BigFraction positiveRatio(String text) {
        BigFraction ratio = Notations.NUMBER.read(text, unit()).exact();
        if (ratio.signum() <= 0) {
            throw new Unreadable(KitText.quoted(text) + " will not do here: it must be more than nought.");
        }
        return ratio;
    }

    /** The spindle speeds; at least one must be there. */
    Speeds speeds() {
        List<SpindleSpeed> plate = list("speeds", text -> speed(text));
        return new Speeds(plate.isEmpty() ? List.of(SpindleSpeed.rpm(1)) : plate);
    }

    private SpindleSpeed speed(String text) {
        SpindleSpeed speed = Notations.SPINDLE_SPEED.read(text, unit());
        if (!(speed.rpm() > 0 && speed.rpm() <= MOST_RPM)) {
            throw new Unreadable(
                    KitText.quoted(text) + " is no speed of a spindle: write revolutions a minute, as on the plate.");
        }
        return speed;
    }

    /** Feeds, none of which need be there. */
    Feeds feeds(String key) {
        return new Feeds(form.values(key, text -> KitText.positive(text, unit()).length()));
    }

    /** A list that must be there and hold something. */
    <T> List<T> list(String key, Function<String, T> reader) {
        boolean sound = form.isSound();
        List<T> read = form.values(key, reader);
        if (!form.has(key)) {
            form.refuse(ReadingFault.KEY_MISSING, "'" + key + "' is missing here.");
        } else if (read.isEmpty() && sound && form.isSound()) {
            form.refuse(key, ReadingFault.NOTHING_WRITTEN, "'" + key + "' lists nothing: at least one is needed.");
        } else if (read.size() > MOST_LISTED) {
            form.refuse(
                    key,
                    KitFault.CANNOT_BE,
                    "'" + key + "' lists " + read.size() + ": no more than " + MOST_LISTED + " are read.");
        }
        return read;
    }

    /** The group under a key that must be there. */
    <T> Optional<T> group(String key, Function<KitForm, Optional<T>> reader) {
        return form.form(key).flatMap(inner -> reader.apply(new KitForm(inner)));
    }

    /** The group under a key that may be there. */
    <T> Optional<T> findGroup(String key, Function<KitForm, Optional<T>> reader) {
        return form.has(key) ? group(key, reader) : Optional.empty();
    }

    /** The groups listed under a key, none of which need be there. */
    <T> List<T> rows(String key, Function<KitForm, Optional<T>> reader) {
        return form.rows(key, (row, number) -> reader.apply(new KitForm(row)));
    }

    /**
     * Makes the thing, unless something was wrong; what the thing itself will not have is said here.
     *
     * @param made may throw {@link IllegalArgumentException} saying what cannot be
     */
    <T> Optional<T> build(Supplier<T> made) {
        return form.build(() -> attempt(made)).flatMap(each -> each);
    }

    private <T> Optional<T> attempt(Supplier<T> made) {
        try {
            return Optional.of(made.get());
        } catch (IllegalArgumentException e) {
            form.refuse(KitFault.CANNOT_BE, sentence(String.valueOf(e.getMessage())));
            return Optional.empty();
        }
    }

    private static String sentence(String message) {
        return "This cannot be: " + message + ".";
    }

    private <Q> Function<String, Q> read(Notation<Q> notation) {
        BiFunction<String, LengthUnit, Q> reader = notation::read;
        return text -> reader.apply(text, unit());
    }
}
