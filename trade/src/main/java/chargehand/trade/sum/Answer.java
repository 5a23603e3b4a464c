package chargehand.trade.sum;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/** What a sum gives back: named figures in order. Also builds the groups inside an answer. */
public final class Answer {
    private final Map<String, Figure> figures = new LinkedHashMap<>();

    /** Adds one figure and returns this answer; a name may be given once. */
    public Answer with(String name, Figure figure) {
        if (figures.putIfAbsent(name, figure) != null) {
            throw new IllegalStateException("'" + name + "' is answered twice");
        }
        return this;
    }

    /** The figures, in the order they were added. */
    public Map<String, Figure> figures() {
        return Collections.unmodifiableMap(figures);
    }

    /** The figure of this name; refuses a name the answer does not have. */
    public Figure get(String name) {
        Figure figure = figures.get(name);
        if (figure == null) {
            throw new IllegalArgumentException("no '" + name + "' in this answer, which has " + figures.keySet());
        }
        return figure;
    }

    /** These figures as one value inside another answer. */
    public Figure asGroup() {
        return new Figure.Group(figures);
    }
}
