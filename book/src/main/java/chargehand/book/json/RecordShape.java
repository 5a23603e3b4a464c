package chargehand.book.json;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.RecordComponent;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * The shape of a record: an object with a field for each component. A component that is an empty Optional has no field.
 *
 * @param maker the canonical constructor
 * @param parts the components in order
 */
record RecordShape(Constructor<?> maker, List<Part> parts) implements Shape<Object> {
    /**
     * One component.
     *
     * @param shape of the component, or of what an Optional holds
     */
    record Part(RecordComponent component, Shape<Object> shape) {
        String name() {
            return component.getName();
        }

        boolean isOptional() {
            return component.getType() == Optional.class;
        }
    }

    static RecordShape of(Class<?> type, Shapes shapes) {
        if (!type.isRecord()) {
            throw new IllegalArgumentException("there is no way to write a " + type + " in JSON");
        }
        RecordComponent[] components = type.getRecordComponents();
        Class<?>[] types =
                Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
        try {
            List<Part> parts = Arrays.stream(components)
                    .map(component -> new Part(component, shapes.inside(component.getGenericType())))
                    .toList();
            return new RecordShape(type.getDeclaredConstructor(types), parts);
        } catch (NoSuchMethodException impossible) {
            throw new IllegalStateException(type + " has no canonical constructor", impossible);
        }
    }

    @Override
    public Object write(Object value) {
        return fields(value);
    }

    Map<String, Object> fields(Object value) {
        var fields = new LinkedHashMap<String, Object>();
        for (Part part : parts) {
            Object component = component(part, value);
            Optional<?> given = part.isOptional() ? (Optional<?>) component : Optional.of(component);
            given.ifPresent(present -> fields.put(part.name(), part.shape().write(present)));
        }
        return fields;
    }

    @Override
    public Object read(Node node) {
        Map<String, Node> fields = node.fields();
        refuseUnknown(node, fields.keySet());
        Object[] values = parts.stream().map(part -> value(part, node, fields)).toArray();
        try {
            return maker.newInstance(values);
        } catch (InvocationTargetException refused) {
            throw new UnreadableJson(node.place(), String.valueOf(refused.getCause()), refused);
        } catch (InstantiationException | IllegalAccessException closed) {
            throw new IllegalStateException(maker + " cannot be called", closed);
        }
    }

    private static Object value(Part part, Node node, Map<String, Node> fields) {
        if (!part.isOptional()) {
            return part.shape().read(node.field(part.name()));
        }
        return Optional.ofNullable(fields.get(part.name())).map(part.shape()::read);
    }

    private void refuseUnknown(Node node, Set<String> given) {
        Set<String> known = parts.stream().map(Part::name).collect(Collectors.toSet());
        given.stream().filter(name -> !known.contains(name)).findFirst().ifPresent(name -> {
            throw node.unreadable("there is no '" + name + "' here");
        });
    }

    private static Object component(Part part, Object value) {
        try {
            return part.component().getAccessor().invoke(value);
        } catch (InvocationTargetException | IllegalAccessException closed) {
            throw new IllegalStateException(part.component() + " cannot be read", closed);
        }
    }
}
