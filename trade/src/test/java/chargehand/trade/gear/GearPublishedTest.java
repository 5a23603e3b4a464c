package chargehand.trade.gear;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Angle;
import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.TestFactory;

/** Wheels against handbook formulas and worked examples; each row says whether it was seen in print. */
class GearPublishedTest {
    private static Stream<DynamicTest> each(Consumer<PublishedRow> check, String... kinds) {
        return PublishedRow.of("gears.json", kinds).stream()
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> check.accept(row)));
    }

    private static Ask gear(PublishedRow row, String angle, String... more) {
        String key = row.has("DP") ? "diametralPitch" : "module";
        String pitch = row.text(row.has("DP") ? "DP" : "module");
        var asked = new ArrayList<>(List.of("teeth", row.text("teeth"), key, pitch, "pressureAngle", angle));
        asked.addAll(List.of(more));
        return Ask.of("gear", asked.toArray(String[]::new));
    }

    @TestFactory
    Stream<DynamicTest> blanks() {
        return each(
                row -> {
                    Ask old = gear(row, "14.5");
                    Ask now = gear(row, "20");
                    assertThat(old.in("pitchDiameter")).isCloseTo(row.want("pitch_dia_in"), row.within("pitch_dia_in"));
                    assertThat(old.in("outside")).isCloseTo(row.want("od_in"), row.within("od_in"));
                    assertThat(old.in("circularPitch"))
                            .isCloseTo(row.want("circular_pitch_in"), row.within("circular_pitch_in"));
                    assertThat(old.number("module")).isCloseTo(row.want("module_mm"), row.within("module_mm"));
                    assertThat(old.in("toothDepth"))
                            .isCloseTo(row.want("whole_depth_2157_in"), row.within("whole_depth_2157_in"));
                    assertThat(now.in("toothDepth"))
                            .isCloseTo(row.want("whole_depth_225_in"), row.within("whole_depth_225_in"));
                },
                "dp_blank");
    }

    @TestFactory
    Stream<DynamicTest> spans() {
        return each(
                row -> {
                    String shift = row.has("x") ? row.text("x") : "0";
                    Ask ask = gear(row, row.text("alpha"), "shift", shift, "spanTeeth", row.text("k"));
                    String wanted = row.expects("W_mm") ? "W_mm" : "W_in";
                    double got = row.expects("W_mm") ? ask.mm("span.size") : ask.in("span.size");
                    assertThat(got).isCloseTo(row.want(wanted), row.within(wanted));
                    assertThat(gear(row, row.text("alpha"), "shift", shift).number("span.teeth"))
                            .isEqualTo(row.number("k"));
                },
                "span",
                "span_dp");
    }

    @TestFactory
    Stream<DynamicTest> overPins() {
        return each(
                row -> {
                    String pin = row.has("pin_in") ? row.text("pin_in") + " in" : row.text("pin") + " mm";
                    Ask ask = gear(row, row.text("alpha"), "pin", pin);
                    String wanted = row.expects("M_mm") ? "M_mm" : "M_in";
                    double got = row.expects("M_mm") ? ask.mm("overPins.size") : ask.in("overPins.size");
                    assertThat(got).isCloseTo(row.want(wanted), row.within(wanted));
                },
                "over_pins",
                "over_pins_dp");
    }

    @TestFactory
    Stream<DynamicTest> chordal() {
        return each(
                row -> {
                    Ask ask = gear(row, "20");
                    assertThat(ask.mm("circularThickness")).isCloseTo(row.want("s"), row.within("s"));
                    assertThat(ask.mm("chordal.thickness")).isCloseTo(row.want("s_chord"), row.within("s_chord"));
                    assertThat(ask.mm("chordal.height")).isCloseTo(row.want("h_chord"), row.within("h_chord"));
                },
                "chordal");
    }

    @TestFactory
    Stream<DynamicTest> chordalOfOnePitch() {
        return each(
                row -> {
                    Ask ask = Ask.of("gear", "teeth", row.text("teeth"), "diametralPitch", "1");
                    assertThat(ask.in("chordal.thickness"))
                            .isCloseTo(row.want("thickness_1DP_in"), row.within("thickness_1DP_in"));
                    assertThat(ask.in("chordal.height"))
                            .isCloseTo(row.want("corrected_addendum_1DP_in"), row.within("corrected_addendum_1DP_in"));
                },
                "chordal_1DP");
    }

    @TestFactory
    Stream<DynamicTest> chordalOfARack_isTheLimitOfManyTeeth() {
        return each(
                row -> {
                    Ask ask = Ask.of("gear", "teeth", "2000", "module", row.text("module"));
                    assertThat(ask.mm("chordal.thickness")).isCloseTo(row.want("s_chord"), row.within("s_chord"));
                    assertThat(ask.mm("chordal.height")).isCloseTo(row.want("h_chord"), within(0.001));
                },
                "chordal_rack");
    }

    @TestFactory
    Stream<DynamicTest> cutterRanges() {
        return each(
                row -> {
                    int least = (int) row.want("min_teeth");
                    int number = (int) row.number("cutter");
                    assertThat(Cutters.number(least)).contains(number);
                    if (row.wanted("max_teeth") instanceof Number most) {
                        assertThat(Cutters.number(most.intValue())).contains(number);
                        assertThat(Cutters.number(most.intValue() + 1)).contains(number - 1);
                    } else {
                        assertThat(Cutters.number(least - 1)).contains(number + 1);
                        assertThat(Cutters.number(2_000)).contains(number);
                    }
                },
                "cutter_range");
    }

    @TestFactory
    Stream<DynamicTest> cutters() {
        return each(
                row -> {
                    Ask ask = Ask.of("gear", "teeth", row.text("teeth"), "module", "2");
                    assertThat(ask.number("cutter")).isEqualTo(row.want("cutter"));
                    assertThat(ask.number("cutterOtherWay")).isEqualTo(row.want("module_numbering"));
                },
                "cutter_select");
    }

    @TestFactory
    Stream<DynamicTest> involutes() {
        return each(
                row -> {
                    assertThat(Involute.of(Angle.degrees(14.5).inRadians()))
                            .isCloseTo(row.want("inv14_5"), row.within("inv14_5"));
                    assertThat(Involute.of(Angle.degrees(20).inRadians()))
                            .isCloseTo(row.want("inv20"), row.within("inv20"));
                },
                "involute");
    }

    @TestFactory
    Stream<DynamicTest> modules() {
        return each(
                row -> assertThat(Ask.of("gear", "teeth", "20", "diametralPitch", row.text("DP"))
                                .number("module"))
                        .isCloseTo(row.want("module"), row.within("module")),
                "dp_to_module");
    }

    @TestFactory
    Stream<DynamicTest> centres() {
        return PublishedRow.of("gears.json", "centre_distance").stream()
                .filter(row -> row.has("z1"))
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> {
                    Ask ask = Ask.of(
                            "gear", "teeth", row.text("z1"), "module", row.text("module"), "mate", row.text("z2"));
                    assertThat(ask.mm("centres")).isCloseTo(row.want("centre_mm"), row.within("centre_mm"));
                }));
    }

    @TestFactory
    Stream<DynamicTest> racks() {
        return each(
                row -> assertThat(Ask.of(
                                        "rack",
                                        "teeth",
                                        row.text("teeth"),
                                        "module",
                                        row.text("module"),
                                        "turns",
                                        row.text("turns"))
                                .mm("travel"))
                        .isCloseTo(row.want("travel_mm"), row.within("travel_mm")),
                "rack");
    }
}
