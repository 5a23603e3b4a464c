package chargehand.trade.stock;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How large a piece of stock a part needs. */
@AutoService(Sum.class)
public final class AllowanceSum implements Sum {
    private static final Kind<Length> SIZE = Kinds.where(
            Kinds.SIZE, size -> !size.isMoreThan(Length.mm(10_000)), "is larger than any stock: at most 10 m");

    private static final Field<StockForm> FORM = Field.required(
            "form",
            "What it is made from",
            Kinds.choice("form of stock", words()),
            "black bar, bright bar, casting, sawn, flame-cut or forging");
    private static final Field<Length> DIAMETER =
            Field.required("diameter", "Largest finished diameter", SIZE, "50 mm; of a block, its thickness");
    private static final Field<Length> LENGTH =
            Field.optional("length", "Finished length", SIZE, "120 mm; gives the length of stock");
    private static final Field<Integer> FACES =
            Field.optional("faces", "Ends to face", Kinds.count(0, 2), "2", "0, 1 or 2");

    @Override
    public String name() {
        return "allowance";
    }

    @Override
    public String title() {
        return "Machining allowance";
    }

    @Override
    public String purpose() {
        return "Gives how much larger than the part the stock must be, and the bar or blank to ask for.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(FORM, DIAMETER, LENGTH, FACES);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("perSide", "Allow on each side"),
                Result.always("faceEach", "Allow on each end faced"),
                Result.always("partingWidth", "Width of the parting tool"),
                Result.always("gripLength", "Length in the chuck"),
                Result.always("stockDiameter", "Smallest stock diameter"),
                Result.sometimes("stockLength", "Length of stock"),
                Result.sometimes("barMetric", "Next metric bar usually kept"),
                Result.sometimes("barInch", "Next inch bar usually kept"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("from black bar", Map.of("form", "black bar", "diameter", "50 mm", "length", "120 mm")),
                new Example(
                        "from bright bar, in inches",
                        Map.of("form", "bright bar", "diameter", "1 in", "length", "2 in")),
                new Example("a casting", Map.of("form", "casting", "diameter", "180 mm", "length", "90 mm")),
                new Example(
                        "flame-cut, one face only",
                        Map.of("form", "flame-cut", "diameter", "60", "length", "25", "faces", "1")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        StockForm form = asked.get(FORM);
        Length diameter = asked.get(DIAMETER);
        Allowance allowance = Allowance.of(form, diameter);
        Length stock = allowance.stockDiameter(diameter);
        write(form, allowance, diameter, asked.unit(), working);
        var answer = new Answer()
                .with("perSide", Figure.of(allowance.perSide()))
                .with("faceEach", Figure.of(allowance.faceEach()))
                .with("partingWidth", Figure.of(Allowance.partingWidth(diameter)))
                .with("gripLength", Figure.of(Allowance.gripLength(diameter)))
                .with("stockDiameter", Figure.of(stock));
        asked.find(LENGTH)
                .ifPresent(length -> answer.with("stockLength", Figure.of(stockLength(asked, allowance, working))));
        if (form.isBar()) {
            bar(stock, LengthUnit.MILLIMETRE, working).ifPresent(size -> answer.with("barMetric", Figure.of(size)));
            bar(stock, LengthUnit.INCH, working).ifPresent(size -> answer.with("barInch", Figure.of(size)));
        }
        warn(form, working);
        return answer;
    }

    private static void write(StockForm form, Allowance allowance, Length diameter, LengthUnit unit, Working working) {
        working.fact(
                "Metal to allow on " + form.word() + " of this size",
                LengthText.both(allowance.perSide(), unit) + " a side, " + LengthText.both(allowance.faceEach(), unit)
                        + " an end",
                Allowance.SOURCE);
        working.step(
                "Smallest stock diameter",
                "D + 2 × a side",
                LengthText.in(diameter, unit) + " + 2 × " + LengthText.in(allowance.perSide(), unit),
                LengthText.both(allowance.stockDiameter(diameter), unit),
                Allowance.SOURCE);
    }

    private static Length stockLength(Asked asked, Allowance allowance, Working working) {
        Length length = asked.get(LENGTH);
        int faces = asked.get(FACES);
        Length faced = length.plus(allowance.faceEach().times(faces));
        LengthUnit unit = asked.unit();
        if (!asked.get(FORM).isBar()) {
            working.step(
                    "Length of the blank",
                    "length + faces × an end",
                    LengthText.in(length, unit) + " + " + faces + " × " + LengthText.in(allowance.faceEach(), unit),
                    LengthText.both(faced, unit),
                    Source.COMMON_PRACTICE);
            return faced;
        }
        Length diameter = asked.get(DIAMETER);
        Length whole = faced.plus(Allowance.partingWidth(diameter)).plus(Allowance.gripLength(diameter));
        working.step(
                "Length of bar, with what is parted off and what the chuck holds",
                "length + faces × an end + parting + grip",
                LengthText.in(length, unit) + " + " + faces + " × " + LengthText.in(allowance.faceEach(), unit) + " + "
                        + LengthText.in(Allowance.partingWidth(diameter), unit) + " + "
                        + LengthText.in(Allowance.gripLength(diameter), unit),
                LengthText.both(whole, unit),
                Source.COMMON_PRACTICE);
        return whole;
    }

    private static Optional<Length> bar(Length least, LengthUnit unit, Working working) {
        Optional<Length> size = BarSizes.next(least, unit);
        size.ifPresent(next -> working.fact(
                "Next bar usually kept in " + (unit == LengthUnit.INCH ? "inches" : "millimetres"),
                LengthText.both(next, unit),
                BarSizes.source()));
        return size;
    }

    private static void warn(StockForm form, Working working) {
        working.caution("These allowances are common practice for straight, sound stock: add for bow, rust and scale.");
        switch (form) {
            case FLAME_CUT ->
                working.caution(
                        "A flame-cut edge is hard at the skin: take the first cut well below it, at a low speed.");
            case CASTING, FORGING ->
                working.caution("Scale and sand blunt the tool: get under the skin with the first cut.");
            case BRIGHT_BAR ->
                working.caution(
                        "Bright bar can be left as it comes where its own finish and size will do; turned on one side"
                                + " only it may bend.");
            case BLACK_BAR, SAWN -> {}
        }
    }

    private static Map<String, StockForm> words() {
        var words = new LinkedHashMap<String, StockForm>();
        for (StockForm form : StockForm.values()) {
            words.put(form.word(), form);
        }
        words.put("black", StockForm.BLACK_BAR);
        words.put("bright", StockForm.BRIGHT_BAR);
        words.put("flame cut", StockForm.FLAME_CUT);
        return words;
    }
}
