package chargehand.book.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import chargehand.book.method.Finding;
import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.Limits;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Cut.EdgeForm;
import chargehand.method.plan.Cut.ThreadWay;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Holding.Support;
import chargehand.method.plan.Planned.Code;
import chargehand.method.plan.Planned.Reason;
import chargehand.method.plan.Reading;
import chargehand.method.plan.Settings.Feed;
import chargehand.part.End;
import chargehand.trade.thread.ScrewThread;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class RecordJsonTest {
    private static final int CASES = 300;
    private static final long SEED = 20260302;

    private final RecordJson<Finding> findings = RecordJson.of(Finding.class);
    private final RecordJson<Cut> cuts = RecordJson.of(Cut.class);

    @Test
    void finding_writtenAndRead_isEqual() {
        var any = new AnyRecord(new Random(SEED));
        for (int index = 0; index < CASES; index++) {
            Finding finding = (Finding) any.of(Finding.class);
            assertThat(findings.read(findings.line(finding))).isEqualTo(finding);
            assertThat(findings.read(findings.pretty(finding))).isEqualTo(finding);
        }
        assertThat(any.made())
                .as("every case of every closed set was among them")
                .containsAll(everyCase());
    }

    private static List<Class<?>> everyCase() {
        return Stream.of(
                        Finding.class, Cut.class, Holding.class, Support.class, Blank.class, EdgeForm.class, Feed.class)
                .<Class<?>>flatMap(set -> Stream.of(set.getPermittedSubclasses()))
                .toList();
    }

    @Test
    void cut_written_readsLikeAPerson() {
        var thread = new Cut.ThreadOutside(
                ScrewThread.parse("3/8 BSP"), Length.in(0), Length.in(0.5), ThreadWay.DIE_FROM_TAILSTOCK);
        assertThat(cuts.line(thread))
                .isEqualTo("{\"kind\":\"thread outside\",\"thread\":\"G 3/8\",\"from\":{\"mm\":0.0,\"in\":0.0},"
                        + "\"to\":{\"mm\":12.7,\"in\":0.5},\"way\":\"die from tailstock\"}");
        var chamfer = new Cut.FinishEdge(
                Length.ZERO, Length.mm(20), End.B, false, new EdgeForm.Chamfer(Length.mm(1), Angle.degrees(45)));
        assertThat(cuts.line(chamfer))
                .endsWith("\"towards\":\"B\",\"inside\":false,"
                        + "\"form\":{\"kind\":\"chamfer\",\"length\":{\"mm\":1.0,\"in\":0.03937007874015748},"
                        + "\"angle\":{\"deg\":45.0}}}");
    }

    @Test
    void reading_writtenOverLines_readsLikeAPerson() {
        var reading = new Reading("Ø", new Limits(Length.mm(24.98), Length.mm(25)), "micrometer");
        assertThat(RecordJson.of(Reading.class).pretty(reading)).isEqualToNormalizingNewlines("""
                {
                  "what" : "Ø",
                  "limits" : {
                    "least" : {
                      "mm" : 24.98,
                      "in" : 0.9834645669291339
                    },
                    "most" : {
                      "mm" : 25.0,
                      "in" : 0.984251968503937
                    }
                  },
                  "gauge" : "micrometer"
                }""");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "{\"kind\":\"saw off\",\"from\":{\"mm\":0}}                              | 'to' is missing",
                "{\"kind\":\"saw off\",\"from\":{\"mm\":0},\"to\":{\"mm\":\"ten\"}}       | to.mm: should be a number",
                "{\"kind\":\"saw off\",\"from\":{\"mm\":0},\"to\":{\"mm\":1},\"way\":1}   | there is no 'way' here",
                "{\"kind\":\"saw off\",\"from\":{\"mm\":0},\"to\":{\"mm\":1e12}}          | to: length must be a number",
                "{\"kind\":\"saw off\",\"from\":{\"mm\":0},\"to\":null}                   | to: should be an object",
                "{\"kind\":\"saw\"}                                                       | kind: should be one of",
                "{\"from\":{\"mm\":0}}                                                    | 'kind' is missing",
                "{\"kind\":\"face end\",\"end\":\"C\",\"at\":{\"mm\":0}}                  | end: should be one of [A, B]",
                "{\"kind\":\"saw off\",\"from\":[],\"to\":{\"mm\":1}}                     | from: should be an object",
                "[]                                                                       | should be an object, not []",
                "12                                                                       | should be an object, not 12",
                "{\"kind\":\"saw off\"                                                    | Unexpected end",
            })
    void text_ofSomethingElse_isRefusedWithItsPlace(String text, String say) {
        assertThatThrownBy(() -> cuts.read(text))
                .isInstanceOf(UnreadableJson.class)
                .hasMessageStartingWith(say);
    }

    @Test
    void reasonCode_unknown_namesThoseThatAre() {
        assertThatThrownBy(() -> RecordJson.of(Reason.class).read("{\"code\":\"no way\",\"say\":\"\",\"unlock\":\"\"}"))
                .isInstanceOf(UnreadableJson.class)
                .hasMessageStartingWith("code: ")
                .hasMessageContaining(Spoken.of(Code.NO_HOLDING));
    }

    @Test
    void type_thatLosesSomething_isRefused() {
        assertThatThrownBy(() -> RecordJson.of(Thread.class)).isInstanceOf(IllegalArgumentException.class);
    }
}
