package chargehand.trade.size;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Nearest64;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;

/** What a size is in the other units of the shop. */
@AutoService(Sum.class)
public final class SizeSum implements Sum {
    private static final Source INCH = new Source("ISO 31-1: 1 in = 25.4 mm exactly");
    private static final int EXACT_MM = 6;
    private static final int INCH_DECIMALS = 5;

    private static final Field<NamedSize> SIZE =
            Field.required("size", "Size", NamedSize.SIZE, "1 3/8, .8125 in, 5 thou, 20.6 mm, #7, letter F, M12");

    @Override
    public String name() {
        return "size";
    }

    @Override
    public String title() {
        return "Size";
    }

    @Override
    public String purpose() {
        return "Reads a size in any of the trade's notations and gives it in millimetres, inches, thou and the nearest 64th.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(SIZE);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("length", "Size").shownFine(),
                Result.always("nearest64", "Nearest 64th of an inch"),
                Result.always("off64", "Larger than that fraction by").shownFine(),
                Result.always("thou", "Thousandths of an inch"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("millimetres", Map.of("size", "20.6 mm")),
                new Example("a fraction", Map.of("size", "1 3/8")),
                new Example("a bare number on an inch dial", Map.of("size", ".8125", "unit", "in")),
                new Example("a numbered drill", Map.of("size", "#7")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        NamedSize size = asked.get(SIZE);
        Length length = size.length();
        Nearest64 nearest = Nearest64.of(length);
        working.fact("The size is read as " + size.named(), LengthText.both(length, asked.unit()), INCH);
        write(length, nearest, working);
        return new Answer()
                .with("length", Figure.of(length))
                .with("nearest64", Figure.of(nearest.fraction()))
                .with("off64", Figure.of(nearest.off()))
                .with("thou", Figure.of(length.in() * 1000));
    }

    private static void write(Length length, Nearest64 nearest, Working working) {
        String inches = LengthText.inchFigures(length, INCH_DECIMALS);
        working.step(
                "Inches from millimetres",
                "in = mm / 25.4",
                LengthText.mmFigures(length, EXACT_MM) + " / 25.4",
                inches + " in",
                INCH);
        working.step(
                "64ths of an inch",
                "64 × in, to the nearest whole number",
                "64 × " + inches,
                sixtyFourths(nearest),
                Source.GEOMETRY);
        working.step(
                "How much larger the size is than the fraction",
                "in − fraction",
                inches + " − " + nearest.fraction(),
                LengthText.signed(nearest.off(), LengthUnit.INCH) + " ("
                        + LengthText.signed(nearest.off(), LengthUnit.MILLIMETRE) + ")",
                Source.GEOMETRY);
        working.step("Thou", "thou = 1000 × in", "1000 × " + inches, LengthText.thou(length), Source.GEOMETRY);
    }

    private static String sixtyFourths(Nearest64 nearest) {
        return nearest.sixtyFourths() + "/64 = " + nearest.fraction() + " in";
    }
}
