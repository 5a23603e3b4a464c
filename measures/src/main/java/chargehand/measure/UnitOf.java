package chargehand.measure;

import java.util.List;
import java.util.function.DoubleFunction;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;

/**
 * One unit of one kind of quantity.
 *
 * @param symbol how it is written after a figure for people
 * @param phrases every way in which a person may write it, as {@link UnitPhrase} spells them
 * @param of the quantity of so many
 * @param in how many a quantity is
 * @param <Q> the quantity
 */
record UnitOf<Q>(String symbol, List<String> phrases, DoubleFunction<Q> of, ToDoubleFunction<Q> in) {
    /** A unit written by its symbol or by any of the spellings. */
    static <Q> UnitOf<Q> unit(DoubleFunction<Q> of, ToDoubleFunction<Q> in, String symbol, String... spellings) {
        var phrases = Stream.concat(Stream.of(symbol), Stream.of(spellings))
                .map(UnitPhrase::of)
                .toList();
        return new UnitOf<>(symbol, phrases, of, in);
    }

    /** A unit that is this one so many times. */
    UnitOf<Q> times(double factor, String otherSymbol, String... spellings) {
        return unit(n -> of.apply(n * factor), quantity -> count(quantity) / factor, otherSymbol, spellings);
    }

    double count(Q quantity) {
        return in.applyAsDouble(quantity);
    }

    /** The quantity in this unit to four significant figures: {@code 12.5 kN}. */
    String text(Q quantity) {
        return Figures.four(count(quantity)) + " " + symbol;
    }
}
