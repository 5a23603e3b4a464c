package chargehand.trade.dividing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import chargehand.trade.sum.Figure;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class DivideSumTest {
    private static final String ROWS = "dividing.json";
    private static final String PLATES = "15,16,17,18,19,20; 21,23,27,29,31,33; 37,39,41,43,47,49";
    private static final String GEARS = "24,24,28,32,40,44,48,56,64,72,86,100";

    static List<PublishedRow> plain() {
        return PublishedRow.of(ROWS, "simple").stream()
                .filter(row -> row.text("circles").equals("B&S 15-49"))
                .toList();
    }

    static List<PublishedRow> differential() {
        return PublishedRow.of(ROWS, "differential");
    }

    static List<PublishedRow> chords() {
        return PublishedRow.of(ROWS, "chord");
    }

    static List<PublishedRow> handbookChords() {
        return PublishedRow.of("sections.json", "chord", "chord_constant");
    }

    @ParameterizedTest
    @MethodSource("handbookChords")
    void divide_anyCircle_givesTheChordOfTheHandbookTable(PublishedRow row) {
        boolean constant = row.kind().equals("chord_constant");
        Ask ask = Ask.of(
                "divide",
                "divisions",
                row.text("n"),
                "plates",
                PLATES,
                "diameter",
                constant ? "1000 mm" : row.text("pcd") + " mm");

        if (constant) {
            assertThat(ask.mm("chord") / 1000).isCloseTo(row.want("factor"), within(5e-6));
        } else {
            assertThat(ask.mm("chord")).isCloseTo(row.want("chord"), within(6e-6));
        }
    }

    @ParameterizedTest
    @MethodSource("plain")
    void divide_numberInTable_isPlainWherePrinted(PublishedRow row) {
        Ask ask =
                Ask.of("divide", "divisions", row.text("divisions"), "worm", row.text("worm_ratio"), "plates", PLATES);

        boolean plain = ask.text("ways.0.kind").equals("plain") && ask.yes("ways.0.exact");
        assertThat(plain).isEqualTo(row.wanted("possible"));
        if (plain) {
            assertThat(ask.number("ways.0.turns")).isEqualTo(row.want("whole_turns"));
            assertThat(ask.many("ways")).hasSize(((List<?>) row.wanted("options")).size());
            assertThat(ask.degrees("tableError")).isZero();
        }
    }

    @ParameterizedTest
    @MethodSource("differential")
    void divide_numberNeedingGears_isExactWithThem(PublishedRow row) {
        Ask ask = Ask.of("divide", "divisions", row.text("divisions"), "plates", PLATES, "gears", GEARS);

        assertThat(ask.degrees("ways.0.error")).isZero();
        assertThat(ask.many("ways"))
                .anyMatch(way -> way instanceof Figure.Group group
                        && group.figures().get("kind") instanceof Figure.Words words
                        && words.text().equals("differential"));
    }

    @ParameterizedTest
    @MethodSource("chords")
    void divide_onDiameter_givesTheChord(PublishedRow row) {
        Ask ask = Ask.of(
                "divide", "divisions", row.text("divisions"), "plates", PLATES, "diameter", row.text("pcd_mm") + " mm");

        assertThat(ask.mm("chord")).isCloseTo(row.want("chord_mm"), row.within("chord_mm"));
    }

    @Test
    void divide_noExactWay_offersNearestAndATableThatDoesNotAddUp() {
        Ask ask = Ask.of("divide", "divisions", "127", "plates", PLATES);

        assertThat(ask.yes("ways.0.exact")).isFalse();
        assertThat(ask.many("table")).hasSize(127);
        // Half a hole of the finest circle of 49 at a 40:1 worm.
        assertThat(ask.degrees("tableError")).isLessThanOrEqualTo(360.0 / 40 / 49 / 2);
        assertThat(ask.cautions()).anyMatch(say -> say.contains("adds its error up"));
    }

    @Test
    void divide_wrongIdlers_wouldCutThePublishedOtherNumber() {
        PublishedRow row = PublishedRow.of(ROWS, "differential_rule").getFirst();
        Ask ask = Ask.of("divide", "divisions", "127", "plates", "39", "gears", "24,56");

        assertThat(ask.text("ways.0.say"))
                .isEqualTo("13 holes in the 39 circle, the plate geared to the spindle: 56 on the spindle driving 24 on"
                        + " the worm's shaft, 2 idlers");
        assertThat(ask.text("ways.0.plate")).isEqualTo("against the crank");
        double plate = ask.number("ways.0.plateRatio");
        double crank = ask.number("ways.0.holes") / ask.number("ways.0.circle");
        assertThat((40 - plate) / crank).isCloseTo(row.want("divisions_if_plate_runs_against_crank"), within(1e-9));
        assertThat((40 + plate) / crank).isCloseTo(row.want("divisions_if_plate_runs_with_crank"), within(1e-9));
    }

    @Test
    void divide_platesOneCircleToAnEntry_lieOnOnePlate() {
        assertThat(Ask.of("divide", "divisions", "77", "plates", "21; 33").figure("ways"))
                .isEqualTo(
                        Ask.of("divide", "divisions", "77", "plates", "21, 33").figure("ways"));
        assertThat(Ask.of("divide", "divisions", "77", "plates", "21, 33").text("ways.0.kind"))
                .isEqualTo("compound");
    }

    @Test
    void divide_rotaryTableAngle_takesItsOwnWorm() {
        // 90:1, so 4° to a turn of the handle: 30° is 7 1/2 turns (t02-136, computed).
        Ask ask = Ask.of("divide", "angle", "30", "worm", "90", "plates", "20");

        assertThat(ask.number("ways.0.turns")).isEqualTo(7);
        assertThat(ask.number("ways.0.holes")).isEqualTo(10);
        assertThat(ask.number("crank")).isEqualTo(7.5);
    }

    @Test
    void divide_angleNearestHole_errsAsPrinted() {
        PublishedRow row = PublishedRow.of(ROWS, "angular_approx").getFirst();
        Ask ask = Ask.of("divide", "angle", row.text("angle_min") + "'", "plates", row.text("circle"));

        assertThat(ask.number("ways.0.holes")).isEqualTo(row.number("holes"));
        assertThat(ask.degrees("ways.0.error") * 60).isCloseTo(row.want("error_min"), within(5e-5));
    }

    @Test
    void divide_movesFinerThanAnyHole_saysWhatIsNeeded() {
        Ask ask = Ask.of("divide", "divisions", "6", "worm", "1", "plates", "1");

        assertThat(ask.many("ways")).isEmpty();
        assertThat(ask.text("why")).contains("finer circle");
    }

    @Test
    void divide_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("divide", "plates", PLATES).isRefusedAt("divisions", "one of the two");
        Ask.of("divide", "divisions", "6", "angle", "60", "plates", PLATES).isRefusedAt("divisions", "one of the two");
        Ask.of("divide", "divisions", "6").isRefusedAt("plates", "needed");
        Ask.of("divide", "divisions", "0", "plates", PLATES).isRefusedAt("divisions", "1");
        Ask.of("divide", "divisions", "6", "plates", "many").isRefusedAt("plates", "whole numbers");
        Ask.of("divide", "angle", "-5", "plates", PLATES).isRefusedAt("angle", "more than nothing");
        Ask.of("divide", "divisions", "6", "worm", "0", "plates", PLATES).isRefusedAt("worm", "1");
    }
}
