package chargehand.trade.sum;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class EntryKindTest {
    private static final Column<Length> LENGTH = Column.first("length", Kinds.SIZE);
    private static final Column<Integer> COUNT = Column.mayBe("x", "count", Kinds.count(1, 99));
    private static final Column<Length> RADIUS = Column.mayBe(":r", "radius", Kinds.SIZE);
    private static final Column<Length> DIAMETER = Column.mayBe(":", "diameter", Kinds.SIZE);
    private static final Kind<Entry> KIND = Kinds.entry("bar", LENGTH, COUNT, DIAMETER, RADIUS);

    private static Entry read(String written) {
        return KIND.read(written, LengthUnit.MILLIMETRE);
    }

    @Test
    void read_shortForm_takesEachValueBehindItsMark() {
        assertThat(read("610").get(LENGTH)).isEqualTo(Length.mm(610));
        assertThat(read("610").find(COUNT)).isEmpty();
        assertThat(read("610 mm × 10").get(COUNT)).isEqualTo(10);
        assertThat(read("1/2 in X 3:12").get(DIAMETER)).isEqualTo(Length.mm(12));
        assertThat(read("24 in:r6").get(RADIUS)).isEqualTo(Length.mm(6));
        assertThat(read("24 in:r6").find(DIAMETER)).isEmpty();
    }

    @Test
    void read_namedForm_takesAnyOrder() {
        Entry entry = read("count=4 | length=2 in");

        assertThat(entry.get(LENGTH)).isEqualTo(Length.in(2));
        assertThat(entry.get(COUNT)).isEqualTo(4);
    }

    @Test
    void read_whatEchoSays_isTheSameAgain() {
        for (String written : List.of("610 x 10", "12 x 3 : 5", "7 :r 3")) {
            String echo = KIND.echo(read(written), LengthUnit.MILLIMETRE);
            assertThat(echo).startsWith(written.substring(0, written.indexOf(' ')));
        }
        assertThat(KIND.echo(read("610x10"))).isEqualTo("610 mm (24.0157 in) x 10");
    }

    @Test
    void read_wrongEntry_saysWhichValueAndWhatWouldDo() {
        assertThatThrownBy(() -> read("x 10"))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("has no length: write length [x count]");
        assertThatThrownBy(() -> read("610 x ten"))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("count:");
        assertThatThrownBy(() -> read("length=6 | cuont=3"))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("'cuont' is none of length, count");
    }

    @Test
    void written_objectsOfAStream_becomeTheNamedForm() {
        Map<String, Object> ask = Map.of("pieces", List.of(Map.of("length", 610), Map.of("length", "24 in")));

        String text = AskTree.written(ask).getOrDefault("pieces", "");

        List<Entry> entries = Kinds.listOf(KIND, 5).read(text, LengthUnit.MILLIMETRE);
        assertThat(entries).extracting(entry -> entry.get(LENGTH)).containsExactly(Length.mm(610), Length.in(24));
    }

    @Test
    void written_deeperOrDisguised_isRefused() {
        assertThatThrownBy(() -> AskTree.written(Map.of("pieces", List.of(Map.of("a", Map.of("b", 1))))))
                .isInstanceOf(Refusal.class);
        assertThatThrownBy(() -> AskTree.written(Map.of("pieces", Map.of("a", "1 | b=2"))))
                .isInstanceOf(Refusal.class);
    }
}
