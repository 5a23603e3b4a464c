package chargehand.book.json;

import java.lang.reflect.ParameterizedType;
import java.lang.reflect.Type;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Finds the shape of a type: a quantity's own; for records, lists, closed sets and constants from what they are. A type
 * that holds itself has none.
 */
final class Shapes {
    private final Map<Type, Shape<?>> found = new HashMap<>(Quantities.SHAPES);

    Shapes() {
        found.put(String.class, new Plain<String>(text -> text, Node::text));
        found.put(boolean.class, new Plain<Boolean>(truth -> truth, Node::truth));
        found.put(long.class, new Plain<Long>(number -> number, Node::whole));
        found.put(int.class, new Plain<Integer>(number -> number, node -> Math.toIntExact(node.whole())));
        found.put(Integer.class, of(int.class));
        found.put(double.class, new Plain<>(Shapes::finite, Node::number));
    }

    private static Object finite(Double number) {
        if (!Double.isFinite(number)) {
            throw new IllegalArgumentException("JSON has no " + number);
        }
        return number;
    }

    /** The shape of a type, or of what an Optional of it holds. */
    Shape<Object> inside(Type type) {
        boolean optional = type instanceof ParameterizedType generic && generic.getRawType() == Optional.class;
        return of(optional ? argument(type) : type);
    }

    @SuppressWarnings("unchecked") // a shape is found by the very type that it is then used for
    Shape<Object> of(Type type) {
        Shape<?> known = found.get(type);
        if (known != null) {
            return (Shape<Object>) known;
        }
        Shape<?> made = make(type);
        found.put(type, made);
        return (Shape<Object>) made;
    }

    private Shape<?> make(Type type) {
        if (type instanceof ParameterizedType generic && generic.getRawType() == List.class) {
            return new Many<>(of(argument(type)));
        }
        if (type instanceof Class<?> plain) {
            return make(plain);
        }
        throw new IllegalArgumentException("there is no way to write a " + type + " in JSON");
    }

    private Shape<?> make(Class<?> type) {
        if (type.isEnum()) {
            return constant(type);
        }
        return type.isSealed() ? OneOf.of(type, this) : RecordShape.of(type, this);
    }

    private static Type argument(Type type) {
        return ((ParameterizedType) type).getActualTypeArguments()[0];
    }

    private static Shape<?> constant(Class<?> type) {
        List<Enum<?>> constants = Arrays.stream(type.getEnumConstants())
                .<Enum<?>>map(constant -> (Enum<?>) constant)
                .toList();
        return new Plain<Enum<?>>(
                Spoken::of,
                node -> constants.stream()
                        .filter(constant -> Spoken.of(constant).equals(node.text()))
                        .findFirst()
                        .orElseThrow(() -> node.unreadable("should be one of "
                                + constants.stream().map(Spoken::of).toList() + ", not '" + node.text() + "'")));
    }
}
