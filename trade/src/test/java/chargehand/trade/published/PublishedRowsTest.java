package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.trade.PublishedRow;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicContainer;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/**
 * Every published row that bears on a sum, through the mouth of the {@code sums} command. A row that bears on none is named
 * with the reason in {@code no-sum.csv}; a new row is asked or named there, or this test fails.
 */
class PublishedRowsTest {
    private static final Path LEDGER = Path.of("../docs/coverage.md");
    private static final List<Topic> TOPICS = List.of(
            WheelRows.topic(),
            DividingRows.topic(),
            TaperRows.topic(),
            FitRows.topic(),
            PressRows.topic(),
            GearRows.topic(),
            StrengthRows.topic(),
            CuttingRows.topic(),
            SectionRows.topic(),
            WireRows.topic(),
            ThreadRows.topic(),
            DrillRows.topic(),
            MaterialRows.topic(),
            ValveRows.topic(),
            StockRows.topic());

    @TestFactory
    Stream<DynamicContainer> everyRow_isAnsweredWithinItsTolerance() {
        return TOPICS.stream()
                .map(topic -> DynamicContainer.dynamicContainer(
                        topic.name(), topic.rows().stream().map(row -> asked(topic, row))));
    }

    private static DynamicTest asked(Topic topic, PublishedRow row) {
        return DynamicTest.dynamicTest(row.toString(), () -> {
            List<Query> queries = topic.queries(row);
            if (queries.isEmpty()) {
                assertThat(Unasked.why(topic, row))
                        .as("why no sum answers this")
                        .isPresent();
            }
            queries.forEach(Query::check);
        });
    }

    @Test
    void unasked_kinds_areOnlyThoseThatStandInTheRows() {
        assertThat(Unasked.kinds()).isEqualTo(Unasked.kindsMet(TOPICS));
    }

    /** {@code -Dgolden.rewrite=true} puts the counts of today into the ledger. */
    @Test
    void ledger_hasTheCountsOfTheRows() throws IOException {
        String written = Files.readString(LEDGER);
        String counted = new Ledger(TOPICS).into(written);
        if (Boolean.getBoolean("golden.rewrite")) {
            Files.writeString(LEDGER, counted);
        } else {
            assertThat(written).isEqualTo(counted);
        }
    }
}
