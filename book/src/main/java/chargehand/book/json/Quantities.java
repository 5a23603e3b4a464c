package chargehand.book.json;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.SpindleSpeed;
import chargehand.measure.WorkTime;
import chargehand.trade.sum.Source;
import chargehand.trade.thread.ScrewThread;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Function;

/** The shapes of quantities and of what is usually written as one word: the same as in the answers of sums. */
final class Quantities {
    static final Map<Class<?>, Shape<?>> SHAPES = Map.of(
            Length.class,
                    new Plain<>(
                            Quantities::length,
                            node -> Length.mm(node.field("mm").number())),
            Angle.class, one("deg", Angle::degrees, Angle::new),
            WorkTime.class, one("s", WorkTime::seconds, WorkTime::new),
            SpindleSpeed.class, new Plain<>(SpindleSpeed::rpm, node -> new SpindleSpeed(node.number())),
            LengthUnit.class, new Plain<>(LengthUnit::symbol, Quantities::unit),
            Source.class, new Plain<>(Source::text, node -> new Source(node.text())),
            ScrewThread.class, new Plain<>(ScrewThread::designation, node -> ScrewThread.parse(node.text())));

    private Quantities() {}

    private static Object length(Length length) {
        var fields = new LinkedHashMap<String, Object>();
        fields.put("mm", length.mm());
        fields.put("in", length.in());
        return fields;
    }

    private static <T> Shape<T> one(String name, Function<T, Double> figure, Function<Double, T> of) {
        return new Plain<>(
                value -> Map.of(name, figure.apply(value)),
                node -> of.apply(node.field(name).number()));
    }

    private static LengthUnit unit(Node node) {
        return Arrays.stream(LengthUnit.values())
                .filter(unit -> unit.symbol().equals(node.text()))
                .findFirst()
                .orElseThrow(() -> node.unreadable("should be mm or in, not '" + node.text() + "'"));
    }
}
