package chargehand.method.wish;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * All that is asked of one method.
 *
 * @param list in the order in which it was asked, each once
 */
public record Wishes(List<Wish> list) {
    public static final Wishes NONE = new Wishes(List.of());

    public Wishes {
        list = list.stream().distinct().toList();
    }

    public static Wishes of(Wish... wishes) {
        return new Wishes(List.of(wishes));
    }

    public boolean isEmpty() {
        return list.isEmpty();
    }

    /** The same and one more. */
    public Wishes and(Wish wish) {
        var all = new ArrayList<>(list);
        all.add(wish);
        return new Wishes(all);
    }

    /** The same but for one. */
    public Wishes less(Wish wish) {
        return new Wishes(list.stream().filter(each -> !each.equals(wish)).toList());
    }

    /** The wishes of one kind. */
    public <W extends Wish> Stream<W> of(Class<W> kind) {
        return list.stream().filter(kind::isInstance).map(kind::cast);
    }
}
