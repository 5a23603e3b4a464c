package chargehand.book.json;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * The shape of a type with a closed set of cases: a case is its record with a field {@code kind} in front.
 *
 * @param cases the words for each kind to its shape
 */
record OneOf(Map<String, RecordShape> cases) implements Shape<Object> {
    private static final String KIND = "kind";

    static OneOf of(Class<?> sealed, Shapes shapes) {
        var cases = new LinkedHashMap<String, RecordShape>();
        for (Class<?> type : sealed.getPermittedSubclasses()) {
            cases.put(Spoken.of(type), RecordShape.of(type, shapes));
        }
        return new OneOf(cases);
    }

    @Override
    public Object write(Object value) {
        String kind = Spoken.of(value.getClass());
        var fields = new LinkedHashMap<String, Object>();
        fields.put(KIND, kind);
        fields.putAll(shape(kind).orElseThrow().fields(value));
        return fields;
    }

    @Override
    public Object read(Node node) {
        Node kind = node.field(KIND);
        return shape(kind.text())
                .orElseThrow(() -> kind.unreadable("should be one of " + cases.keySet() + ", not " + kind.text()))
                .read(new Node(node.place(), without(node)));
    }

    private Optional<RecordShape> shape(String kind) {
        return Optional.ofNullable(cases.get(kind));
    }

    private static Map<String, Object> without(Node node) {
        var fields = new LinkedHashMap<String, Object>();
        node.fields().forEach((name, field) -> fields.put(name, field.value()));
        fields.remove(KIND);
        return fields;
    }
}
