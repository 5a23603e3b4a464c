package chargehand.trade.wheels;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.measure.Pitch;
import chargehand.trade.PublishedRow;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Trains out of old screw-cutting tables and newer charts: what they cut, and that the search finds as good a one. */
class WheelTrainsPublishedTest {
    private static final String ROWS = "change-wheels.json";
    private static final double ROUNDED_TO_PPM = 1e-3;

    static List<PublishedRow> trains() {
        return PublishedRow.of(ROWS, "train_check", "train_check_approx");
    }

    static List<PublishedRow> searches() {
        return PublishedRow.of(ROWS, "best_compound_from_set");
    }

    @ParameterizedTest
    @MethodSource("trains")
    void train_ofChart_cutsThePitchPrinted(PublishedRow row) {
        CutPitch cut = CutPitch.of(train(row), leadscrew(row), wanted(row));

        assertThat(cut.train().ratio().doubleValue()).isCloseTo(row.want("ratio"), within(1e-9));
        assertThat(cut.pitch().inMm()).isCloseTo(row.want("pitch_mm"), row.within("pitch_mm"));
        assertThat(cut.pitch().tpi().doubleValue()).isCloseTo(row.want("tpi"), row.within("tpi"));
        assertThat(cut.error().doubleValue() * 1e6).isCloseTo(row.want("error_ppm"), within(ROUNDED_TO_PPM));
        assertThat(cut.errorOver(Length.mm(100)).mm()).isCloseTo(row.want("error_mm_per_100mm"), within(1e-6));
        assertThat(cut.exact()).isEqualTo(row.want("error_ppm") == 0);
    }

    @ParameterizedTest
    @MethodSource("trains")
    void search_ofTheWheelsInTheChart_findsATrainAsGood(PublishedRow row) {
        CutPitch printed = CutPitch.of(train(row), leadscrew(row), wanted(row));
        var set = new WheelSet(IntStream.concat(
                        printed.train().drivers().stream().mapToInt(Integer::intValue),
                        printed.train().driven().stream().mapToInt(Integer::intValue))
                .boxed()
                .toList());

        Tried found = WheelTrains.of(set)
                .withPairs(printed.train().drivers().size())
                .best(CutPitch.ratio(wanted(row), leadscrew(row)), 1)
                .getFirst();

        assertThat(found.error().abs()).isLessThanOrEqualTo(printed.error().abs());
    }

    @ParameterizedTest
    @MethodSource("searches")
    void search_ofOneEachTwentyToAHundred_leavesThePublishedError(PublishedRow row) {
        var set = new WheelSet(
                IntStream.rangeClosed(4, 20).map(n -> n * 5).boxed().toList());
        BigFraction ratio = CutPitch.ratio(Pitch.ofMm(row.text("thread_pitch_mm")), Pitch.ofTpi(8));

        Tried best = WheelTrains.of(set).best(ratio, 1).getFirst();

        assertThat(Math.abs(best.error().doubleValue()) * 1e6).isCloseTo(row.want("best_abs_error_ppm"), within(5e-4));
    }

    @Test
    void ratio_ofMetricThreadOnMetricScrew_isThatOfTheExercise() {
        PublishedRow row = PublishedRow.of(ROWS, "ratio_metric").getFirst();

        assertThat(CutPitch.ratio(Pitch.ofMm(row.text("thread_pitch_mm")), Pitch.ofMm(row.text("leadscrew_pitch_mm"))))
                .isEqualTo(BigFraction.of(1, 3));
    }

    @Test
    void error_ofTranslatingPair_isThatOfTheChart() {
        PublishedRow row = PublishedRow.of(ROWS, "translation_ratio_error").getFirst();
        Train pair = Train.of(List.of((int) row.number("num")), List.of((int) row.number("den")));
        Tried tried = Tried.against(BigFraction.of(127, 100), pair);

        assertThat(tried.error().doubleValue() * 1e6).isCloseTo(row.want("error_ppm"), within(0.2));
        assertThat(pair.ratio().doubleValue()).isCloseTo(row.want("ratio"), within(1e-6));
    }

    private static Train train(PublishedRow row) {
        return Train.of(teeth(row, "drivers"), teeth(row, "driven"));
    }

    private static List<Integer> teeth(PublishedRow row, String wheels) {
        return ((List<?>) row.given(wheels))
                .stream().map(teeth -> (Integer) teeth).toList();
    }

    private static Pitch leadscrew(PublishedRow row) {
        return Pitch.ofTpi(row.text("leadscrew_tpi"));
    }

    private static Pitch wanted(PublishedRow row) {
        return row.text("thread_unit").equals("tpi") ? Pitch.ofTpi(row.text("thread")) : Pitch.ofMm(row.text("thread"));
    }
}
