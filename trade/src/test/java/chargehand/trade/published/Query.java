package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.trade.PublishedRow;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Consumer;
import org.assertj.core.data.Offset;

/** What a published row asks of a sum, and the figures that the answer is held to. */
final class Query {
    private final String sum;
    private final Map<String, Object> ask = new LinkedHashMap<>();
    private final List<Consumer<Reply>> held = new ArrayList<>();

    private Query(String sum) {
        this.sum = sum;
    }

    static Query of(String sum) {
        return new Query(sum);
    }

    /** A length worked out in a test, as a person would write it: to the nanometre. */
    static String mm(double millimetres) {
        return String.format(Locale.ROOT, "%.6f mm", millimetres);
    }

    String sum() {
        return sum;
    }

    Query with(String field, Object value) {
        ask.put(field, value);
        return this;
    }

    /** The number at a path is the row's figure, within the row's tolerance. */
    Query gives(String path, PublishedRow row, String figure) {
        return gives(path, row.want(figure), row.within(figure));
    }

    /** The same where the row has such a figure. */
    Query givesAny(String path, PublishedRow row, String figure) {
        return row.expects(figure) ? gives(path, row, figure) : this;
    }

    Query gives(String path, double wanted, Offset<Double> within) {
        return holds(reply -> assertThat(reply.number(path)).as(path).isCloseTo(wanted, within));
    }

    /** The text, count or list at a path is as printed. */
    Query says(String path, Object wanted) {
        return holds(reply -> assertThat(reply.at(path)).as(path).isEqualTo(wanted));
    }

    Query holds(Consumer<Reply> check) {
        held.add(check);
        return this;
    }

    void check() {
        assertThat(held).as("figures held").isNotEmpty();
        Reply reply = Reply.to(sum, ask);
        held.forEach(check -> check.accept(reply));
    }
}
