package chargehand.trade.bars;

import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.Map;

/** The working of a cutting list: what pieces take, what bars offer, the bound, and the bars with what comes out of each. */
record BarsWorking(CutQuestion question, CutPlan plan, LengthUnit unit, Working working) {
    private static final int MOST_SHOWN = 30;
    private static final Source BOUND = Source.memory("Fekete and Schepers, New classes of fast lower bounds");
    private static final Source SHARING =
            Source.memory("Gilmore and Gomory, A linear programming approach to the cutting-stock problem, 1961");

    void write(boolean priced) {
        Length need = Length.ZERO;
        for (int i = 0; i < question.size(); i++) {
            need = need.plus(
                    new Length(question.need(i)).times(question.pieces().get(i).count()));
        }
        Length longest = question.pieces().getFirst().length();
        working.step(
                "A piece takes its length and one cut",
                "l + kerf",
                in(longest) + " + " + in(question.kerf()),
                in(longest.plus(question.kerf())) + " for the longest",
                Source.GEOMETRY);
        bound(need);
        if (!question.isOneKind()) {
            working.fact(
                    priced ? "No plan costs less, by length" : "No plan buys less, by length",
                    Figures.four(plan.bound()) + (priced ? "" : " mm"),
                    Source.GEOMETRY);
        }
        bars();
        String aim = priced ? "least price" : "least length bought";
        working.fact(
                plan.proved()
                        ? "Every other plan was ruled out by its bound or tried"
                        : "Not every plan could be tried: this is the best of those that were",
                plan.bars().size() + " bars, " + LengthText.both(plan.length(), unit) + ", aimed at "
                        + (question.isOneKind() ? "fewest bars" : aim),
                Source.GEOMETRY);
        working.caution("Measure each bar and offcut before the first cut, and cut the longest pieces first.");
    }

    private void bound(Length need) {
        StockKind most = question.kinds().stream()
                .max((a, b) -> Long.compare(a.offers(), b.offers()))
                .orElseThrow();
        Length offers = new Length(most.offers());
        working.step(
                "Bars of the longest kind that all pieces would fill without a gap",
                "Σ n (l + kerf) / (L − grip − end + kerf of a cut past the end)",
                in(need) + " / " + in(offers),
                Figures.atMost(3, need.over(offers)),
                Source.GEOMETRY);
        long plain = new CutBound(question).bars();
        working.fact("No plan takes fewer bars, for pieces do not split", plain + " bars", BOUND);
        long better = question.isOneKind() ? Math.round(plan.bound()) : plain;
        if (better > plain) {
            working.fact("Nor fewer than these, by which pieces can share a bar", better + " bars", SHARING);
        }
    }

    private void bars() {
        var alike = new LinkedHashMap<String, Integer>();
        plan.bars().forEach(bar -> alike.merge(contents(bar), 1, Integer::sum));
        int shown = 0;
        for (Map.Entry<String, Integer> entry : alike.entrySet()) {
            shown++;
            if (shown > MOST_SHOWN) {
                working.fact("And other ways of filling a bar", alike.size() - MOST_SHOWN + " more", Source.GEOMETRY);
                return;
            }
            working.fact(entry.getValue() == 1 ? "Once" : entry.getValue() + " times", entry.getKey(), Source.GEOMETRY);
        }
    }

    private String contents(CutBar bar) {
        var parts = new ArrayList<String>();
        for (int i = 0; i < question.size(); i++) {
            if (bar.count(i) > 0) {
                parts.add(bar.count(i) + " × " + in(question.pieces().get(i).length()));
            }
        }
        return "from " + in(bar.kind().length()) + ": " + String.join(", ", parts);
    }

    private String in(Length length) {
        return LengthText.in(length, unit);
    }
}
