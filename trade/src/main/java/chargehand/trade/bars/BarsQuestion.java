package chargehand.trade.bars;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Ratio;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Entry;
import chargehand.trade.sum.Refusal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/** Settles what is asked of a cutting list: equal entries together, what each bar offers, and what the plan aims at. */
final class BarsQuestion {
    private static final int MOST_PIECES = 2_000;

    /** What a millimetre of bar costs beside the aim: only enough to choose between plans alike. */
    private static final double BESIDE = 1e-8;

    private final Asked asked;
    private final boolean priced;
    private final boolean buys;

    BarsQuestion(Asked asked) {
        this.asked = asked;
        List<Entry> stock = asked.get(BarsSum.STOCK);
        priced = stock.stream().anyMatch(entry -> entry.find(BarsSum.PRICE).isPresent());
        buys = stock.stream().anyMatch(entry -> entry.find(BarsSum.BAR_COUNT).isEmpty());
    }

    boolean isPriced() {
        return priced;
    }

    CutQuestion question() {
        List<StockKind> kinds = kinds();
        List<CutQuestion.Piece> pieces = pieces();
        Length kerf = asked.get(BarsSum.KERF);
        var question = new CutQuestion(pieces, kinds, kerf);
        long offers = kinds.stream().mapToLong(StockKind::offers).max().orElseThrow();
        if (question.need(0) > offers) {
            throw Refusal.of(
                    BarsSum.PIECES,
                    "no bar here is long enough for "
                            + LengthText.both(pieces.getFirst().length(), asked.unit())
                            + ", with what the cut, the grip and the end take.");
        }
        return question;
    }

    private List<CutQuestion.Piece> pieces() {
        var counts = new TreeMap<Length, Integer>(Comparator.reverseOrder());
        for (Entry entry : asked.get(BarsSum.PIECES)) {
            int count = entry.find(BarsSum.PIECE_COUNT).orElse(1);
            counts.merge(entry.get(BarsSum.PIECE_LENGTH), count, Integer::sum);
        }
        if (counts.values().stream().mapToInt(Integer::intValue).sum() > MOST_PIECES) {
            throw Refusal.of(BarsSum.PIECES, "more than " + MOST_PIECES + " pieces: plan them in lots.");
        }
        return counts.entrySet().stream()
                .map(entry -> new CutQuestion.Piece(entry.getKey(), entry.getValue()))
                .toList();
    }

    private List<StockKind> kinds() {
        var kinds = new ArrayList<StockKind>();
        List<Entry> stock = asked.get(BarsSum.STOCK);
        for (Entry entry : stock) {
            StockKind kind = kind(entry, stock.size() == 1);
            int same = same(kinds, kind);
            if (same < 0) {
                kinds.add(kind);
            } else {
                kinds.set(same, together(kinds.get(same), kind));
            }
        }
        kinds.removeIf(kind -> kind.offers() <= 0);
        if (kinds.isEmpty()) {
            throw Refusal.of(BarsSum.STOCK, "grip and end waste take the whole of every bar.");
        }
        return kinds;
    }

    private StockKind kind(Entry entry, boolean alone) {
        Length length = entry.get(BarsSum.BAR_LENGTH);
        int available = entry.find(BarsSum.BAR_COUNT).orElse(StockKind.NO_END);
        boolean bought = available == StockKind.NO_END;
        if (priced && bought && entry.find(BarsSum.PRICE).isEmpty()) {
            throw Refusal.of(BarsSum.STOCK, "give a price with every bar that is to be bought, or with none.");
        }
        double price = entry.find(BarsSum.PRICE).map(Ratio::value).orElse(0.0);
        double aim = priced ? price : bought || !buys ? length.mm() : 0;
        double cost = alone ? 1 : aim + BESIDE * length.mm();
        return new StockKind(length, offers(length), available, cost, price);
    }

    /** A last piece that is not gripped may fall off with its cut beyond the end of the bar. */
    private long offers(Length length) {
        Length grip = asked.get(BarsSum.GRIP);
        Length usable = length.minus(grip).minus(asked.get(BarsSum.END_WASTE));
        return (grip.isZero() ? usable.plus(asked.get(BarsSum.KERF)) : usable).nanometres();
    }

    private static int same(List<StockKind> kinds, StockKind kind) {
        for (int i = 0; i < kinds.size(); i++) {
            StockKind other = kinds.get(i);
            if (other.length().equals(kind.length())
                    && other.price() == kind.price()
                    && other.isBought() == kind.isBought()) {
                return i;
            }
        }
        return -1;
    }

    private static StockKind together(StockKind one, StockKind other) {
        int available = one.isBought() ? StockKind.NO_END : one.available() + other.available();
        return new StockKind(one.length(), one.offers(), available, one.cost(), one.price());
    }
}
