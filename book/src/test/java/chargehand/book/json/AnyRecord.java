package chargehand.book.json;

import chargehand.measure.Length;
import chargehand.measure.Limits;
import chargehand.method.plan.Holding.Grip;
import chargehand.method.plan.Settings.Geared;
import chargehand.trade.thread.ScrewThread;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;

/** Makes up values of record types, every case of a closed set as likely as another. */
public final class AnyRecord {
    private static final List<String> WORDS = List.of(
            "", "Ø .825", "turn \"true\"\n", "ünbalanced \\ 1/2", "\u2026±0.01 µm", "plain words", "\ud83d\udd29");
    private static final List<String> THREADS =
            List.of("M12", "M20x1.5", "G 3/8", "1/2 BSW", "2 BA", "Tr 40x14 (P7) LH", "1/2-13 UNC", "1/2-10 Acme");
    private static final List<Double> FIGURES =
            List.of(0.1, 1 / 3.0, 1e-9, 12.7, -0.0254, 3e5, Double.MIN_VALUE, 0.1 + 0.2);

    private final RandomGenerator chance;
    private final Set<Class<?>> made = new HashSet<>();

    public AnyRecord(RandomGenerator chance) {
        this.chance = chance;
    }

    /** The record types of which at least one was made. */
    Set<Class<?>> made() {
        return made;
    }

    public Object of(Type type) {
        if (type instanceof ParameterizedType generic) {
            return ofGeneric(generic);
        }
        Class<?> plain = (Class<?>) type;
        if (plain == Length.class) {
            return length();
        }
        if (plain == Limits.class) {
            return Limits.plusMinus(length(), length().abs());
        }
        if (plain == Grip.class) {
            Length from = length();
            return new Grip(from, from.plus(new Length(1 + chance.nextLong(1_000_000_000))), length());
        }
        if (plain == Geared.class) {
            return geared();
        }
        return plain == ScrewThread.class ? ScrewThread.parse(one(THREADS)) : ofPlain(plain);
    }

    private Object ofGeneric(ParameterizedType generic) {
        Type argument = generic.getActualTypeArguments()[0];
        if (generic.getRawType() == Optional.class) {
            return chance.nextBoolean() ? Optional.of(of(argument)) : Optional.empty();
        }
        return IntStream.rangeClosed(1, 1 + chance.nextInt(2))
                .mapToObj(index -> of(argument))
                .toList();
    }

    private Object ofPlain(Class<?> type) {
        if (type == String.class) {
            return one(WORDS);
        }
        if (type == int.class || type == Integer.class) {
            return 1 + chance.nextInt(1_000);
        }
        if (type == long.class) {
            return chance.nextLong();
        }
        if (type == double.class) {
            return one(FIGURES);
        }
        return type == boolean.class ? (Object) chance.nextBoolean() : ofClosedSet(type);
    }

    private Object ofClosedSet(Class<?> type) {
        if (type.isEnum()) {
            return one(Arrays.asList(type.getEnumConstants()));
        }
        return type.isSealed() ? ofRecord(one(List.of(type.getPermittedSubclasses()))) : ofRecord(type);
    }

    private Object ofRecord(Class<?> type) {
        made.add(type);
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        Object[] values =
                Arrays.stream(components).map(part -> of(part.getGenericType())).toArray();
        try {
            return type.getDeclaredConstructor(types).newInstance(values);
        } catch (ReflectiveOperationException refused) {
            throw new LinkageError(type + " of " + Arrays.toString(values), refused);
        }
    }

    private Geared geared() {
        made.add(Geared.class);
        int pairs = 1 + chance.nextInt(2);
        return new Geared(teeth(pairs), teeth(pairs), chance.nextInt(3));
    }

    private List<Integer> teeth(int wheels) {
        return chance.ints(wheels, 20, 101).boxed().toList();
    }

    private Length length() {
        return new Length(chance.nextLong(-2_000_000_000L, 2_000_000_000L));
    }

    private <T> T one(List<T> of) {
        return of.get(chance.nextInt(of.size()));
    }
}
