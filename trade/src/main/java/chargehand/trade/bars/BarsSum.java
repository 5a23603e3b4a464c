package chargehand.trade.bars;

import chargehand.measure.Length;
import chargehand.measure.Ratio;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Column;
import chargehand.trade.sum.Entry;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;

/** Which pieces to cut from which bars. */
@AutoService(Sum.class)
public final class BarsSum implements Sum {
    private static final int MOST_KINDS = 60;
    private static final int MOST_STOCK = 30;

    private static final Kind<Length> AT_LEAST_NOUGHT = Kinds.where(
            Kinds.LENGTH,
            length -> !length.isNegative() && !length.isMoreThan(Length.mm(10_000)),
            "must be from nothing to 10 m");
    private static final Kind<Length> KERF_KIND = Kinds.where(
            Kinds.LENGTH,
            kerf -> !kerf.isNegative() && !kerf.isMoreThan(Length.mm(50)),
            "is not the width of a cut, from nothing to 50 mm");
    private static final Kind<Length> LONG_ENOUGH = Kinds.where(
            Kinds.WORK_SIZE, length -> !length.isLessThan(Length.mm(0.1)), "is too short to cut, less than 0.1 mm");

    static final Column<Length> PIECE_LENGTH = Column.first("length", LONG_ENOUGH);
    static final Column<Integer> PIECE_COUNT = Column.mayBe("x", "count", Kinds.count(1, 2_000));
    static final Column<Length> BAR_LENGTH = Column.first("length", LONG_ENOUGH);
    static final Column<Integer> BAR_COUNT = Column.mayBe("x", "count", Kinds.count(1, 10_000));
    static final Column<Ratio> PRICE = Column.mayBe(
            "@",
            "price",
            Kinds.where(
                    Kinds.NUMBER,
                    price -> price.value() > 0 && price.value() <= 1e6,
                    "is not a price, more than nothing and at most a million"));

    static final Field<List<Entry>> PIECES = Field.required(
            "pieces",
            "Pieces wanted",
            Kinds.listOf(Kinds.entry("length and count", PIECE_LENGTH, PIECE_COUNT), MOST_KINDS),
            "610 mm x 10, 450 mm x 6");
    static final Field<List<Entry>> STOCK = Field.required(
            "stock",
            "Bars",
            Kinds.listOf(Kinds.entry("length, count and price", BAR_LENGTH, BAR_COUNT, PRICE), MOST_STOCK),
            "1200 mm x 2, 3000 mm: offcuts with how many there are, used first; new bars without; 3000 mm @ 14.50 for a"
                    + " price");
    static final Field<Length> KERF =
            Field.required("kerf", "Width of the cut", KERF_KIND, "2 mm for a saw, 3 mm for parting off; 0 is allowed");
    static final Field<Length> GRIP = Field.optional(
            "grip",
            "Length that stays in the vice or chuck",
            AT_LEAST_NOUGHT,
            "0 mm",
            "0, or 40 mm that is left of a bar");
    static final Field<Length> END_WASTE = Field.optional(
            "endWaste", "Taken off each bar's end first", AT_LEAST_NOUGHT, "0 mm", "0, or 5 mm to square it");

    @Override
    public String name() {
        return "bars";
    }

    @Override
    public String title() {
        return "Cutting list";
    }

    @Override
    public String purpose() {
        return "Plans which pieces to cut from which bars, offcuts first, so that least is bought and least is left over.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(PIECES, STOCK, KERF, GRIP, END_WASTE);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("used", "Bars used"),
                Result.always("usedLength", "Length of bar used"),
                Result.always("bought", "Length to buy"),
                Result.sometimes("price", "Price"),
                Result.always("waste", "Cut away and left over"),
                Result.always("wastePercent", "Waste, of what is used"),
                Result.always("bound", "No plan takes fewer bars than"),
                Result.always("proved", "Proved that no plan is better"),
                Result.always("layout", "Cut"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example(
                        "from bars of one length",
                        Map.of("pieces", "1200 x 4, 800 x 5, 450 x 6", "stock", "3000", "kerf", "3 mm")),
                new Example(
                        "offcuts first, then new bars by price",
                        Map.of(
                                "pieces",
                                "610 mm x 6, 18 in x 4, 200 mm",
                                "stock",
                                "900 mm x 2; 1500 mm x 1; 3000 mm @ 14.50; 6000 mm @ 26",
                                "kerf",
                                "2 mm",
                                "endWaste",
                                "5 mm")),
                new Example(
                        "parted off from what the chuck holds",
                        Map.of("pieces", "24 x 40", "stock", "1000 mm", "kerf", "3", "grip", "35")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        var read = new BarsQuestion(asked);
        CutQuestion question = read.question();
        CutPlan plan = new CutSearch(question)
                .plan()
                .orElseThrow(() -> Refusal.of(
                        STOCK,
                        "no way was found to get all pieces out of these bars: add bars, or leave the count out."));
        new BarsWorking(question, plan, asked.unit(), working).write(read.isPriced());
        Length wanted = question.pieces().stream()
                .map(piece -> piece.length().times(piece.count()))
                .reduce(Length.ZERO, Length::plus);
        Length waste = plan.length().minus(wanted);
        Answer answer = new Answer()
                .with("used", Figure.of((long) plan.bars().size()))
                .with("usedLength", Figure.of(plan.length()))
                .with("bought", Figure.of(plan.bought()));
        if (read.isPriced()) {
            answer.with("price", Figure.of(plan.price()));
        }
        return answer.with("waste", Figure.of(waste))
                .with("wastePercent", Figure.percent(100 * waste.over(plan.length())))
                .with(
                        "bound",
                        Figure.of(question.isOneKind() ? Math.round(plan.bound()) : new CutBound(question).bars()))
                .with("proved", Figure.of(plan.proved()))
                .with("layout", Figure.many(layout(question, plan, asked)));
    }

    private static List<Figure> layout(CutQuestion question, CutPlan plan, Asked asked) {
        return plan.bars().stream()
                .sorted(Comparator.comparing((CutBar bar) -> bar.kind().isBought())
                        .thenComparing(bar -> bar.kind().length()))
                .map(bar -> bar(question, bar, asked))
                .toList();
    }

    private static Figure bar(CutQuestion question, CutBar bar, Asked asked) {
        var pieces = new ArrayList<Figure>();
        for (int i = 0; i < question.size(); i++) {
            for (int n = 0; n < bar.count(i); n++) {
                pieces.add(Figure.of(question.pieces().get(i).length()));
            }
        }
        Length left = bar.kind().length().minus(asked.get(END_WASTE)).minus(new Length(bar.taken()));
        return new Answer()
                .with("stock", Figure.of(bar.kind().length()))
                .with("pieces", Figure.many(pieces))
                .with("offcut", Figure.of(left.isNegative() ? Length.ZERO : left))
                .asGroup();
    }
}
