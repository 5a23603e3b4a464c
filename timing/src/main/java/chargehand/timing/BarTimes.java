package chargehand.timing;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Random;
import java.util.function.Function;
import java.util.stream.Collectors;

/** Cutting lists beside first-fit decreasing: what a shop cuts, and two classes of lists on which that rule is known to do badly. */
final class BarTimes {
    private static final int SEED = 1873;
    private static final int WARM = 3;

    private BarTimes() {}

    /**
     * One cutting list from bars of one length, of which there are as many as it takes.
     *
     * @param pieces lengths in whole millimetres, one for each piece
     */
    record CuttingList(List<Integer> pieces, int bar, int kerf) {
        Map<String, String> ask() {
            String written = pieces.stream()
                    .collect(Collectors.groupingBy(length -> length, Collectors.counting()))
                    .entrySet()
                    .stream()
                    .map(entry -> entry.getKey() + " x " + entry.getValue())
                    .collect(Collectors.joining(", "));
            return Map.of("pieces", written, "stock", String.valueOf(bar), "kerf", String.valueOf(kerf));
        }

        private int wanted() {
            return pieces.stream().mapToInt(Integer::intValue).sum();
        }
    }

    private static final class Tally {
        private long bars;
        private long bound;
        private long byHand;
        private long fewer;
        private long proved;
        private long wanted;
        private long length;
        private long lengthByHand;

        private void add(CuttingList list, Map<String, Object> answer) {
            long used = (long) AskedSum.number(answer, "used");
            long firstFit = FirstFit.bars(list);
            if (used > firstFit) {
                throw new IllegalStateException(list + " took " + used + " bars where first fit took " + firstFit);
            }
            bars += used;
            bound += (long) AskedSum.number(answer, "bound");
            byHand += firstFit;
            fewer += used < firstFit ? 1 : 0;
            proved += Boolean.TRUE.equals(answer.get("proved")) ? 1 : 0;
            wanted += list.wanted();
            length += used * list.bar();
            lengthByHand += firstFit * list.bar();
        }

        private String waste(long ofLength) {
            return String.format(Locale.ROOT, "%.1f %%", 100.0 * (ofLength - wanted) / ofLength);
        }
    }

    static List<Measured> measured() throws Exception {
        var measured = new ArrayList<Measured>();
        measured.addAll(beside("what a shop cuts, 6 to 14 lengths from 3 m bars", lists(200, BarTimes::shop)));
        measured.addAll(beside("60 pieces of 20 to 100 from bars of 150", lists(50, BarTimes::even)));
        measured.addAll(beside("60 pieces, three to each bar without waste", lists(50, BarTimes::triplets)));
        return measured;
    }

    private static List<Measured> beside(String what, List<CuttingList> lists) throws Exception {
        AskedSum sum = AskedSum.named("bars");
        var tally = new Tally();
        lists.forEach(list -> tally.add(list, sum.answer(list.ask())));
        Iterator<CuttingList> each = lists.iterator();
        CuttingList any = lists.getFirst();
        for (int run = 0; run < WARM; run++) {
            sum.answer(any.ask());
        }
        Stopwatch watch =
                Stopwatch.of(0, lists.size(), () -> sum.answer(each.next().ask()));
        String title = "bars: " + lists.size() + " lists, " + what;
        var measured = new ArrayList<>(own(title, tally, watch, lists.size()));
        if (SolvedBars.isThere()) {
            measured.add(solved(title, lists));
        }
        return measured;
    }

    private static Measured solved(String title, List<CuttingList> lists) throws Exception {
        var answers = new ArrayList<SolvedBars>();
        Iterator<CuttingList> each = lists.iterator();
        Stopwatch watch = Stopwatch.of(0, lists.size(), () -> answers.add(SolvedBars.of(each.next())));
        long bars = answers.stream().mapToLong(SolvedBars::bars).sum();
        long proved = answers.stream().filter(SolvedBars::isProved).count();
        return Measured.of(title + ": one list by CP-SAT, at most " + SolvedBars.SECONDS + " s and one thread", watch)
                .beside(bars + " bars; " + proved + " of " + lists.size() + " proved");
    }

    private static List<Measured> own(String title, Tally tally, Stopwatch watch, int lists) {
        return List.of(
                Measured.of(title + ": one list", watch),
                Measured.of(
                                title,
                                tally.bars + " bars, waste " + tally.waste(tally.length) + "; " + tally.proved + " of "
                                        + lists + " proved")
                        .beside("first-fit decreasing: " + tally.byHand + " bars, waste "
                                + tally.waste(tally.lengthByHand) + ", more on " + tally.fewer
                                + " lists; no plan takes fewer than " + tally.bound));
    }

    private static List<CuttingList> lists(int count, Function<Random, CuttingList> draw) {
        var random = new Random(SEED);
        var lists = new ArrayList<CuttingList>();
        for (int i = 0; i < count; i++) {
            lists.add(draw.apply(random));
        }
        return lists;
    }

    private static CuttingList shop(Random random) {
        var pieces = new ArrayList<Integer>();
        int lengths = 6 + random.nextInt(9);
        for (int i = 0; i < lengths; i++) {
            int length = 60 + random.nextInt(1_340);
            int count = 1 + random.nextInt(8);
            for (int n = 0; n < count; n++) {
                pieces.add(length);
            }
        }
        return new CuttingList(pieces, 3_000, 3);
    }

    /** As the class of even lists in E. Falkenauer, A hybrid grouping genetic algorithm for bin packing, 1996 (from memory). */
    private static CuttingList even(Random random) {
        return new CuttingList(random.ints(60, 20, 101).boxed().toList(), 150, 0);
    }

    /** As the class of triplets there (from memory): every bar holds three pieces of between a quarter and a half, and no waste. */
    private static CuttingList triplets(Random random) {
        var pieces = new ArrayList<Integer>();
        for (int bar = 0; bar < 20; bar++) {
            int first = 380 + random.nextInt(111);
            int second = 250 + random.nextInt((1_000 - first) / 2 - 249);
            pieces.addAll(List.of(first, second, 1_000 - first - second));
        }
        return new CuttingList(pieces, 1_000, 0);
    }
}
