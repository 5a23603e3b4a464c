package chargehand.book.json;

import java.util.List;

/** The shape of a list. */
record Many<T>(Shape<T> each) implements Shape<List<T>> {
    @Override
    public Object write(List<T> values) {
        return values.stream().map(each::write).toList();
    }

    @Override
    public List<T> read(Node node) {
        return node.items().stream().map(each::read).toList();
    }
}
