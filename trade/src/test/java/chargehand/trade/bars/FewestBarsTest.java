package chargehand.trade.bars;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** The bound and the close fit against every way of sharing pieces out, and on lists whose fewest bars are known. */
class FewestBarsTest {
    private static final Length BAR = Length.mm(100);

    private static CutQuestion question(int[] lengths) {
        List<CutQuestion.Piece> pieces = Arrays.stream(lengths)
                .distinct()
                .map(length -> -length)
                .sorted()
                .mapToObj(negative -> new CutQuestion.Piece(Length.mm(-negative), (int) Arrays.stream(lengths)
                        .filter(length -> length == -negative)
                        .count()))
                .toList();
        var kind = new StockKind(BAR, BAR.nanometres(), StockKind.NO_END, 1, 0);
        return new CutQuestion(pieces, List.of(kind), Length.ZERO);
    }

    @Test
    void smallLists_agreeWithTryingEverything() {
        var random = new Random(1_911);
        int closed = 0;
        for (int i = 0; i < 200; i++) {
            int[] lengths = random.ints(3 + random.nextInt(7), 15, 71).toArray();
            CutQuestion question = question(lengths);
            int fewest = everything(lengths, 0, new ArrayList<>(), lengths.length);

            var reached = new FewestBars(question, 1, fewest + 1);
            assertThat(reached.better().map(List::size))
                    .as(Arrays.toString(lengths))
                    .contains(fewest);
            assertThat(reached.bound()).isLessThanOrEqualTo(fewest);
            holds(reached.better(), question);
            var beaten = new FewestBars(question, 1, fewest);
            assertThat(beaten.better()).isEmpty();
            assertThat(beaten.bound()).isLessThanOrEqualTo(fewest);
            closed += beaten.bound() == fewest ? 1 : 0;
        }
        assertThat(closed).isEqualTo(200);
    }

    private static int everything(int[] lengths, int at, List<Integer> loads, int best) {
        if (at == lengths.length) {
            return Math.min(best, loads.size());
        }
        int fewest = best;
        for (int bar = 0; bar < loads.size(); bar++) {
            int load = loads.get(bar);
            if (load + lengths[at] <= 100) {
                loads.set(bar, load + lengths[at]);
                fewest = everything(lengths, at + 1, loads, fewest);
                loads.set(bar, load);
            }
        }
        loads.add(lengths[at]);
        fewest = everything(lengths, at + 1, loads, fewest);
        loads.removeLast();
        return fewest;
    }

    private static void holds(Optional<List<CutBar>> plan, CutQuestion question) {
        int[] cut = new int[question.size()];
        for (CutBar bar : plan.orElseThrow()) {
            long taken = 0;
            for (int piece = 0; piece < cut.length; piece++) {
                cut[piece] += bar.count(piece);
                taken += bar.count(piece) * question.need(piece);
            }
            assertThat(taken)
                    .isEqualTo(bar.taken())
                    .isLessThanOrEqualTo(bar.kind().offers());
        }
        assertThat(cut).isEqualTo(question.counts());
    }

    /** Three pieces fill every bar to its end, so that no other number of bars will do. */
    @Test
    void listsThatLeaveNothing_areFoundAgain() {
        var random = new Random(1_938);
        for (int i = 0; i < 5; i++) {
            int[] lengths = new int[45];
            for (int bar = 0; bar < 15; bar++) {
                int first = 38 + random.nextInt(12);
                int second = 25 + random.nextInt((100 - first) / 2 - 24);
                lengths[3 * bar] = first;
                lengths[3 * bar + 1] = second;
                lengths[3 * bar + 2] = 100 - first - second;
            }
            CutPlan plan = new CutSearch(question(lengths)).plan().orElseThrow();
            assertThat(plan.bars()).hasSize(15);
            assertThat(plan.proved()).isTrue();
        }
    }

    /** Every set of counts tried for one bar. */
    @Test
    void dearestBar_isWorthMostOfAllWays() {
        var random = new Random(1_926);
        for (int i = 0; i < 100; i++) {
            CutQuestion question = question(random.ints(8, 8, 60).toArray());
            long[] worth = random.longs(question.size(), 0, 1_000).toArray();
            long most = most(question, worth, 0, BAR.nanometres());
            assertThat(new DearestBar(question).of(worth).orElseThrow().worth()).isEqualTo(most);
        }
    }

    private static long most(CutQuestion question, long[] worth, int piece, long room) {
        if (piece == worth.length) {
            return 0;
        }
        long most = 0;
        for (int take = 0; take <= question.counts()[piece] && take * question.need(piece) <= room; take++) {
            most = Math.max(
                    most, take * worth[piece] + most(question, worth, piece + 1, room - take * question.need(piece)));
        }
        return most;
    }

    /** Six pieces of just over a third of a bar: two go into each, whatever their length says. */
    @Test
    void worth_seesWhatLengthDoesNot() {
        var worth =
                new BarMix(question(new int[] {34, 35, 36, 37, 38, 39})).worth().orElseThrow();

        assertThat(worth.bars(new int[] {1, 1, 1, 1, 1, 1})).isEqualTo(3);
    }
}
