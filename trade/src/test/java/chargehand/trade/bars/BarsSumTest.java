package chargehand.trade.bars;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.trade.Ask;
import chargehand.trade.PublishedRow;
import chargehand.trade.Tree;
import chargehand.trade.sum.Sums;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

class BarsSumTest {
    @TestFactory
    Stream<DynamicTest> publishedCuttingLists() {
        return PublishedRow.of("stock.json", "cutting_stock").stream()
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> published(row)));
    }

    private static void published(PublishedRow row) {
        String pieces = ((List<?>) row.given("items"))
                .stream()
                        .map(item -> ((List<?>) item).getFirst() + " x " + ((List<?>) item).getLast())
                        .collect(Collectors.joining(", "));
        Ask ask = Ask.of("bars", "pieces", pieces, "stock", row.text("stock"), "kerf", row.text("kerf"));

        assertThat(ask.number("used")).isEqualTo(row.want("optimum_bars"));
        assertThat(ask.number("bound")).isEqualTo(row.want("optimum_bars"));
        assertThat(ask.yes("proved")).isTrue();
        if (row.expects("waste_pct")) {
            assertThat(ask.number("wastePercent")).isCloseTo(row.want("waste_pct"), within(0.001));
        }
        holds(ask, row.number("kerf"), row.number("stock"));
    }

    /** Every bar of the answer has room for its pieces and the cuts between them. */
    private static void holds(Ask ask, double kerf, double stock) {
        for (int i = 0; i < ask.many("layout").size(); i++) {
            double taken = -kerf;
            for (int j = 0; j < ask.many("layout." + i + ".pieces").size(); j++) {
                taken += ask.mm("layout." + i + ".pieces." + j) + kerf;
            }
            assertThat(taken).isLessThanOrEqualTo(stock + 1e-6);
        }
    }

    @TestFactory
    Stream<DynamicTest> barNeededForSomePieces() {
        return PublishedRow.of("stock.json", "bar_needed").stream()
                .map(row -> DynamicTest.dynamicTest(row.toString(), () -> {
                    double faced = row.number("length") + 2 * row.number("face_allow_each_end");
                    String pieces = faced + " x " + (int) row.number("pieces");
                    double bar = row.want("without_last_cut");
                    assertThat(used(pieces, bar, row)).isEqualTo(1);
                    assertThat(used(pieces, bar - 0.01, row)).isEqualTo(2);
                }));
    }

    private static double used(String pieces, double bar, PublishedRow row) {
        return Ask.of("bars", "pieces", pieces, "stock", bar + " mm", "kerf", row.text("kerf"))
                .number("used");
    }

    /** Small lists against every way of sharing pieces out, one by one. */
    @Test
    void smallLists_agreeWithTryingEverything() {
        var random = new Random(20_260_311);
        for (int i = 0; i < 60; i++) {
            int[] lengths = random.ints(4 + random.nextInt(5), 8, 60).toArray();
            int[] bars = {60 + random.nextInt(20), 90 + random.nextInt(30)};
            double best = everything(lengths, bars);

            String pieces = Arrays.stream(lengths).mapToObj(String::valueOf).collect(Collectors.joining(","));
            Ask ask = Ask.of("bars", "pieces", pieces, "stock", bars[0] + "," + bars[1], "kerf", "1");

            assertThat(ask.mm("bought"))
                    .as(pieces + " from " + Arrays.toString(bars))
                    .isCloseTo(best, within(1e-6));
            assertThat(ask.yes("proved")).isTrue();
        }
    }

    private static double everything(int[] lengths, int[] bars) {
        int[] sorted = Arrays.stream(lengths)
                .boxed()
                .sorted(Comparator.reverseOrder())
                .mapToInt(Integer::intValue)
                .toArray();
        return share(sorted, 0, new ArrayList<>(), bars, new double[] {Double.MAX_VALUE});
    }

    private static double share(int[] lengths, int at, List<Integer> loads, int[] bars, double[] best) {
        if (at == lengths.length) {
            double cost = loads.stream()
                    .mapToDouble(load -> load <= bars[0] + 1 ? bars[0] : bars[1])
                    .sum();
            best[0] = Math.min(best[0], cost);
            return best[0];
        }
        for (int i = 0; i < loads.size(); i++) {
            int load = loads.get(i);
            if (load + lengths[at] + 1 <= bars[1] + 1) {
                loads.set(i, load + lengths[at] + 1);
                share(lengths, at + 1, loads, bars, best);
                loads.set(i, load);
            }
        }
        loads.add(lengths[at] + 1);
        share(lengths, at + 1, loads, bars, best);
        loads.removeLast();
        return best[0];
    }

    @Test
    void bound_isNeverAboveThePlan_onManyLists() {
        var random = new Random(5);
        for (int i = 0; i < 40; i++) {
            var pieces = new ArrayList<CutQuestion.Piece>();
            for (int length = 900; length > 100; length -= 60 + random.nextInt(90)) {
                pieces.add(new CutQuestion.Piece(Length.mm(length), 1 + random.nextInt(4)));
            }
            Length bar = Length.mm(1000);
            var kind = new StockKind(bar, bar.nanometres(), StockKind.NO_END, 1, 0);
            var question = new CutQuestion(pieces, List.of(kind), Length.ZERO);
            CutPlan plan = new CutSearch(question).plan().orElseThrow();
            assertThat(new CutBound(question).bars())
                    .isLessThanOrEqualTo(plan.bars().size());
        }
    }

    @Test
    void offcuts_areUsedBeforeAnythingIsBought() {
        Ask ask = Ask.of("bars", "pieces", "400 x 4", "stock", "850 x 2, 6000", "kerf", "2");

        assertThat(ask.mm("bought")).isZero();
        assertThat(ask.number("used")).isEqualTo(2);
    }

    @Test
    void prices_decideBetweenBars() {
        Ask dearLong = Ask.of("bars", "pieces", "900 x 6", "stock", "3000 @ 10; 6000 @ 25", "kerf", "2");
        Ask cheapLong = Ask.of("bars", "pieces", "900 x 6", "stock", "3000 @ 10; 6000 @ 15", "kerf", "2");

        assertThat(dearLong.number("price")).isEqualTo(20);
        assertThat(cheapLong.number("price")).isEqualTo(15);
    }

    @Test
    void gripAndEnd_takeFromEveryBar() {
        // (200 − 40 − 10) / (27 + 3) = 5 pieces a bar
        Ask ask = Ask.of("bars", "pieces", "27 x 10", "stock", "200", "kerf", "3", "grip", "40", "endWaste", "10");

        assertThat(ask.number("used")).isEqualTo(2);
        assertThat(ask.mm("layout.0.offcut")).isCloseTo(40, within(1e-6));
    }

    @Test
    void objectsOfAStream_areReadAsEntries() {
        var ask = Map.of(
                "pieces", List.of(Map.of("length", 610, "count", 10)),
                "stock", List.of(Map.of("length", "3050 mm", "price", 12.5)),
                "kerf", 2);
        Map<String, Object> tree = Sums.load().answer(Map.of("sum", "bars", "ask", ask), LengthUnit.MILLIMETRE);

        assertThat(Tree.number(tree, "answer", "used")).isEqualTo(3);
        assertThat(Tree.number(tree, "answer", "price")).isEqualTo(37.5);
    }

    @Test
    void bars_wronglyAsked_areRefusedBesideTheirField() {
        Ask.of("bars", "pieces", "610 x 10", "stock", "3000").isRefusedAt("kerf", "needed");
        Ask.of("bars", "pieces", "3100", "stock", "3000", "kerf", "2").isRefusedAt("pieces", "long enough");
        Ask.of("bars", "pieces", "610 x ten", "stock", "3000", "kerf", "2").isRefusedAt("pieces", "count");
        Ask.of("bars", "pieces", "610 x 10", "stock", "3000 x 1", "kerf", "2").isRefusedAt("stock", "no way");
        Ask.of("bars", "pieces", "610", "stock", "3000, 6000 @ 4", "kerf", "2").isRefusedAt("stock", "price");
        Ask.of("bars", "pieces", "610", "stock", "3000", "kerf", "2", "grip", "4000")
                .isRefusedAt("stock", "grip");
    }
}
