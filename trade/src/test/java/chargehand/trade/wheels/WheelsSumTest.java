package chargehand.trade.wheels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WheelsSumTest {
    private static final String ROWS = "change-wheels.json";
    private static final String FIVES =
            IntStream.rangeClosed(4, 20).mapToObj(n -> Integer.toString(n * 5)).collect(Collectors.joining(","));

    static List<PublishedRow> trains() {
        return PublishedRow.of(ROWS, "train_check");
    }

    static List<PublishedRow> searches() {
        return PublishedRow.of(ROWS, "best_compound_from_set");
    }

    /** Asked for nothing but the wheels in a printed train, the sum finds that train or one as good. */
    @ParameterizedTest
    @MethodSource("trains")
    void wheels_ofPrintedTrain_cutThePitchPrinted(PublishedRow row) {
        String set = Stream.of("drivers", "driven")
                .flatMap(name -> ((List<?>) row.given(name)).stream())
                .map(String::valueOf)
                .collect(Collectors.joining(","));
        Ask ask = Ask.of(
                "wheels",
                "pitch",
                row.text("thread") + " " + row.text("thread_unit"),
                "leadscrew",
                row.text("leadscrew_tpi") + " tpi",
                "wheels",
                set,
                "stages",
                "3",
                "length",
                "100 mm",
                "best",
                "1");

        assertThat(Math.abs(ask.number("trains.0.error")) * 1e6)
                .isLessThanOrEqualTo(Math.abs(row.want("error_ppm")) + 1e-6);
        assertThat(ask.yes("trains.0.exact")).isEqualTo(ask.number("trains.0.error") == 0);
        assertThat(ask.mm("trains.0.errorOver")).isCloseTo(ask.number("trains.0.error") * 100, within(1e-6));
    }

    @ParameterizedTest
    @MethodSource("searches")
    void wheels_oneEachTwentyToAHundred_leaveThePublishedError(PublishedRow row) {
        Ask ask = Ask.of("wheels", "pitch", row.text("thread_pitch_mm") + " mm", "leadscrew", "8 tpi", "wheels", FIVES);

        assertThat(Math.abs(ask.number("trains.0.error")) * 1e6)
                .isCloseTo(row.want("best_abs_error_ppm"), within(5e-4));
        assertThat(ask.many("trains")).hasSize(10);
    }

    @Test
    void wheels_threadByName_isThatOfItsPitch() {
        Ask byName = Ask.of("wheels", "pitch", "G 3/8", "leadscrew", "8 tpi", "wheels", "20,38,40,50,60,95");
        Ask byPitch = Ask.of("wheels", "pitch", "19 tpi", "leadscrew", "8 tpi", "wheels", "20,38,40,50,60,95");

        assertThat(byName.figure("trains")).isEqualTo(byPitch.figure("trains"));
        assertThat(byName.counts("trains.0.drivers")).containsExactly(40);
        assertThat(byName.counts("trains.0.driven")).containsExactly(95);
    }

    @Test
    void wheels_withGearbox_takeTheRatioThatHelps() {
        Ask ask = Ask.of("wheels", "pitch", "1.5 mm", "leadscrew", "6 mm", "wheels", "30,60", "gearbox", "1, 1/2, 1/4");

        assertThat(ask.yes("trains.0.exact")).isTrue();
        assertThat(ask.number("trains.0.gearbox")).isEqualTo(0.5);
        assertThat(ask.mm("trains.0.pitch")).isEqualTo(1.5);
    }

    @Test
    void wheels_metricOnImperialScrew_keepsTheNutClosed() {
        assertThat(Ask.of("wheels", "pitch", "2 mm", "leadscrew", "8 tpi", "wheels", "80,127,40")
                        .cautions())
                .anyMatch(say -> say.contains("keep the half-nut closed"));
        assertThat(Ask.of("wheels", "pitch", "2 mm", "leadscrew", "6 mm", "wheels", "20,60,40")
                        .cautions())
                .noneMatch(say -> say.contains("half-nut"));
    }

    @Test
    void wheels_quadrantTooSmall_saysWhyThereIsNoTrain() {
        Ask ask = Ask.of(
                "wheels", "pitch", "19 tpi", "leadscrew", "8 tpi", "wheels", "20,40,50,38", "quadrant", "200 to 240");

        assertThat(ask.many("trains")).isEmpty();
        assertThat(ask.text("why")).contains("between 200 and 240 teeth together");
    }

    @Test
    void wheels_wronglyAsked_isRefusedBesideItsField() {
        Ask.of("wheels", "leadscrew", "8 tpi", "wheels", "20,40").isRefusedAt("pitch", "needed");
        Ask.of("wheels", "pitch", "banana", "leadscrew", "8 tpi", "wheels", "20,40")
                .isRefusedAt("pitch", "neither");
        Ask.of("wheels", "pitch", "19 tpi", "leadscrew", "0 tpi", "wheels", "20,40")
                .isRefusedAt("leadscrew", "nought");
        Ask.of("wheels", "pitch", "19 tpi", "leadscrew", "8 tpi", "wheels", "20,4")
                .isRefusedAt("wheels", "10");
        Ask.of("wheels", "pitch", "19 tpi", "leadscrew", "8 tpi", "wheels", "20,40", "stages", "4")
                .isRefusedAt("stages", "3");
        Ask.of("wheels", "pitch", "19 tpi", "leadscrew", "8 tpi", "wheels", "20,40", "gearbox", "0")
                .isRefusedAt("gearbox", "gearbox ratio");
        Ask.of("wheels", "pitch", "19 tpi", "leadscrew", "8 tpi", "wheels", "20,40", "quadrant", "wide")
                .isRefusedAt("quadrant", "60 to 140");
    }
}
