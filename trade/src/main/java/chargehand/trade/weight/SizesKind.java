package chargehand.trade.weight;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;

/** Several sizes written one after another: {@code 25 mm x 1 m}, {@code 2 in, 1/4 in, 12 in}. */
record SizesKind(int most) implements Kind<List<Length>> {
    private static final Kind<Length> SIZE = Kinds.where(
            Kinds.SIZE,
            size -> !size.isMoreThan(Length.mm(20_000)),
            "is larger than any piece in a shop: at most 20 m");

    @Override
    public String name() {
        return "sizes";
    }

    @Override
    public List<Length> read(String written, LengthUnit unit) {
        String between = written.matches(".*[x×*;].*") ? "[x×*;]" : ",";
        List<String> entries = Arrays.stream(written.split(between, -1))
                .map(String::strip)
                .filter(entry -> !entry.isEmpty())
                .toList();
        if (entries.isEmpty() || entries.size() > most) {
            throw new Unreadable("write the sizes one after another, such as 25 mm x 1 m.");
        }
        return entries.stream().map(entry -> SIZE.read(entry, unit)).toList();
    }

    @Override
    public String echo(List<Length> sizes) {
        return echo(sizes, LengthUnit.MILLIMETRE);
    }

    @Override
    public String echo(List<Length> sizes, LengthUnit first) {
        return sizes.stream().map(size -> LengthText.in(size, first)).collect(Collectors.joining(" × "));
    }
}
