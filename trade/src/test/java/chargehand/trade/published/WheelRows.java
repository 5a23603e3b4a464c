package chargehand.trade.published;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.trade.PublishedRow;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;

/** Change wheels and the chasing dial. */
final class WheelRows {
    /** Errors are printed in parts of a million to so many. */
    private static final Offset<Double> PARTS = within(1e-3);

    /** 22/7 for π on an 8 tpi leadscrew, as wheels: 22/7 ÷ 3.175 = (40 × 88) / (28 × 127). */
    private static final List<Integer> MODULE_WHEELS = List.of(88, 28, 127);

    private static final int ONE_MODULE_DRIVER = 40;

    private WheelRows() {}

    static Topic topic() {
        return Topic.of("change-wheels.json")
                .asks("train_check", WheelRows::train)
                .asks("train_check_approx", WheelRows::train)
                .asks("ratio_metric", WheelRows::ratio)
                .asks("translation_ratio_error", WheelRows::translation)
                .asks("best_compound_from_set", WheelRows::best)
                .asks("module_worm_lead", WheelRows::worm)
                .asks("thread_dial", WheelRows::sixteenTeeth)
                .asks("thread_dial_32T", WheelRows::thirtyTwoTeeth);
    }

    private static List<Integer> teeth(PublishedRow row, String wheels) {
        return ((List<?>) row.given(wheels))
                .stream().map(each -> (Integer) each).toList();
    }

    private static Query train(PublishedRow row) {
        var wheels = new ArrayList<>(teeth(row, "drivers"));
        wheels.addAll(teeth(row, "driven"));
        return Query.of("wheels")
                .with("pitch", row.text("thread") + " " + row.text("thread_unit"))
                .with("leadscrew", row.text("leadscrew_tpi") + " tpi")
                .with("wheels", wheels)
                .with("stages", teeth(row, "drivers").size())
                .with("length", "100 mm")
                .with("best", 100)
                .holds(reply -> assertThat(reply.list("trains")).anySatisfy(train -> isAsPrinted(row, train)));
    }

    private static void isAsPrinted(PublishedRow row, Reply train) {
        assertThat(same(train.at("drivers"), train.at("driven")))
                .isEqualTo(same(teeth(row, "drivers"), teeth(row, "driven")));
        double pitch = train.number("pitch.mm");
        assertThat(pitch).isCloseTo(row.want("pitch_mm"), row.within("pitch_mm"));
        assertThat(25.4 / pitch).isCloseTo(row.want("tpi"), row.within("tpi"));
        double error = train.number("error");
        assertThat(error * 1e6).isCloseTo(row.want("error_ppm"), PARTS);
        assertThat(train.number("errorOver.mm")).isCloseTo(row.want("error_mm_per_100mm"), within(1e-6));
        assertThat(train.at("exact")).isEqualTo(row.want("error_ppm") == 0);
    }

    /** Drivers and driven wheels whatever their order, without those that stand on both sides. */
    private static List<Set<Object>> same(Object drivers, Object driven) {
        var over = new HashSet<Object>((List<?>) drivers);
        var under = new HashSet<Object>((List<?>) driven);
        var both = new HashSet<>(over);
        both.retainAll(under);
        over.removeAll(both);
        under.removeAll(both);
        return List.of(over, under);
    }

    private static Query ratio(PublishedRow row) {
        return Query.of("wheels")
                .with("pitch", row.text("thread_pitch_mm") + " mm")
                .with("leadscrew", row.text("leadscrew_pitch_mm") + " mm")
                .with("wheels", List.of(20, 60))
                .gives("ratio", row, "ratio");
    }

    private static Query translation(PublishedRow row) {
        return Query.of("wheels")
                .with("pitch", row.text("ideal") + " mm")
                .with("leadscrew", "1 mm")
                .with("wheels", List.of(row.given("num"), row.given("den")))
                .with("stages", 1)
                .says("trains.0.drivers", List.of(row.given("num")))
                .gives("trains.0.pitch.mm", row, "ratio")
                // −125.0 is printed to one place, and is −124.98.
                .holds(reply -> assertThat(reply.number("trains.0.error") * 1e6)
                        .isCloseTo(row.want("error_ppm"), row.within("error_ppm")));
    }

    private static Query best(PublishedRow row) {
        return Query.of("wheels")
                .with("pitch", row.text("thread_pitch_mm") + " mm")
                .with("leadscrew", row.text("leadscrew_tpi") + " tpi")
                .with(
                        "wheels",
                        IntStream.rangeClosed(4, 20).map(n -> 5 * n).boxed().toList())
                .holds(reply -> assertThat(Math.abs(reply.number("trains.0.error")) * 1e6)
                        .isCloseTo(row.want("best_abs_error_ppm"), PARTS));
    }

    private static Query worm(PublishedRow row) {
        var wheels = new ArrayList<>(MODULE_WHEELS);
        wheels.add((int) Math.round(ONE_MODULE_DRIVER * row.number("module")));
        return Query.of("wheels")
                .with("pitch", Math.PI * row.number("module") + " mm")
                .with("leadscrew", row.text("leadscrew_tpi") + " tpi")
                .with("wheels", wheels)
                .gives("ratio", row, "ratio_ideal")
                .gives("trains.0.pitch.mm", row.want("lead_mm") * (1 + row.want("error_ppm") / 1e6), within(1e-5))
                .holds(reply -> {
                    assertThat(reply.number("trains.0.error") * 1e6)
                            .isCloseTo(row.want("error_ppm"), row.within("error_ppm"));
                    assertThat(reply.number("ratio") * (1 + reply.number("trains.0.error")))
                            .isCloseTo(row.want("ratio_22_7"), row.within("ratio_22_7"));
                });
    }

    private static Query dial(PublishedRow row, int teeth) {
        return Query.of("chasing-dial")
                .with("tpi", row.given("tpi"))
                .with("leadscrew", row.text("leadscrew_tpi") + " tpi")
                .with("dialTeeth", teeth)
                .with("dialMarks", 8)
                .gives("repeat.in", row, "repeat_distance_in");
    }

    /** For 6 threads to the inch the manual prints 4.8; by its own rule, and for 10, 14, 18 and 22, it is 2.4.6.8. */
    private static Query sixteenTeeth(PublishedRow row) {
        return dial(row, (int) row.number("dial_gear_teeth"))
                .holds(reply -> assertThat(asPrinted(reply.at("engageAt"))).isEqualTo(row.wantText("engage")));
    }

    private static String asPrinted(Object engageAt) {
        if (!(engageAt instanceof List<?> marks)) {
            return engageAt.toString();
        }
        return marks.size() == 8 ? "1-8" : marks.stream().map(Object::toString).collect(Collectors.joining("."));
    }

    /** Thirty-two teeth on 8 tpi: the dial comes round in the four inches that the manual states. */
    private static Query thirtyTwoTeeth(PublishedRow row) {
        return dial(row, (int) (row.number("dial_turn_in") * row.number("leadscrew_tpi")))
                .holds(reply -> assertThat(reply.at("engageAt") instanceof List<?> marks ? marks.size() : 0)
                        .as(row.wantText("engage"))
                        .isEqualTo(linesAllowed(row.wantText("engage"))));
    }

    /** How many of the dial's eight lines the printed words allow. */
    private static int linesAllowed(String printed) {
        return switch (printed) {
            case "any position", "non-numbered (i.e. every 1/2 in)" -> 8;
            case "numbered 1-4" -> 4;
            case "1,3 or 2,4" -> 2;
            case "1 only" -> 1;
            default -> 0;
        };
    }
}
