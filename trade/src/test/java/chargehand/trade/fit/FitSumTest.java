package chargehand.trade.fit;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import chargehand.trade.sum.Step;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class FitSumTest {
    private static final double NANOMETRE = 1e-6;

    static List<PublishedRow> fits() {
        return PublishedRow.of("iso286.json", "fit");
    }

    @ParameterizedTest
    @MethodSource("fits")
    void fit_ofPublishedPair_givesLimitsAndClearances(PublishedRow row) {
        List<String> classes = List.of(row.text("fit").split("/", -1));
        Ask ask = Ask.of(
                "fit", "size", row.text("size_mm") + " mm", "hole", classes.getFirst(), "shaft", classes.getLast());

        assertThat(ask.mm("clearanceMax") * 1000).isCloseTo(row.want("max_clearance_um"), within(NANOMETRE));
        assertThat(ask.mm("clearanceMin") * 1000).isCloseTo(row.want("min_clearance_um"), within(NANOMETRE));
        assertThat(ask.text("kind")).isEqualTo(row.wantText("type"));
        assertThat(List.of(ask.mm("hole.upper") * 1000, ask.mm("hole.lower") * 1000))
                .isEqualTo(pair(row, "hole_um"));
        assertThat(List.of(ask.mm("shaft.upper") * 1000, ask.mm("shaft.lower") * 1000))
                .isEqualTo(pair(row, "shaft_um"));
    }

    private static List<Double> pair(PublishedRow row, String name) {
        return ((List<?>) row.wanted(name))
                .stream().map(number -> ((Number) number).doubleValue()).toList();
    }

    @Test
    void fit_shaftAlone_givesItsLimitsOnly() {
        Ask ask = Ask.of("fit", "size", "20 mm", "shaft", "h9");

        assertThat(ask.mm("shaft.max")).isEqualTo(20);
        assertThat(ask.mm("shaft.min")).isEqualTo(19.948);
        assertThat(ask.has("hole")).isFalse();
        assertThat(ask.has("clearanceMax")).isFalse();
    }

    @Test
    void fit_pressed_warnsOfThePress() {
        assertThat(Ask.of("fit", "size", "25", "hole", "H7", "shaft", "p6").cautions())
                .anyMatch(say -> say.contains("press"));
        assertThat(Ask.of("fit", "size", "25", "hole", "H7", "shaft", "g6").cautions())
                .isEmpty();
    }

    @Test
    void fit_working_namesRangeGradeAndClearance() {
        assertThat(Ask.of("fit", "size", "50 mm", "hole", "H7", "shaft", "g6").working())
                .extracting(Step::result)
                .contains("IT7 = 25 µm", "es = -9 µm", "0.009 mm (.0004 in)");
    }

    @Test
    void fit_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("fit", "hole", "H7").isRefusedAt("size", "needed");
        Ask.of("fit", "size", "25").isRefusedAt("hole", "H7 and g6");
        Ask.of("fit", "size", "25", "hole", "h7").isRefusedAt("hole", "capital letter");
        Ask.of("fit", "size", "25", "shaft", "G6").isRefusedAt("shaft", "small letter");
        Ask.of("fit", "size", "25", "hole", "H70").isRefusedAt("hole", "01 to 18");
        Ask.of("fit", "size", "4000", "hole", "H7").isRefusedAt("hole", "ends at 3150 mm");
        Ask.of("fit", "size", "600", "hole", "H7", "shaft", "x6").isRefusedAt("shaft", "gives no x6");
        Ask.of("fit", "size", "0.03", "hole", "H7", "shaft", "d9").isRefusedAt("shaft", "takes the whole");
    }
}
