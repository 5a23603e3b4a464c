package chargehand.measure;

import java.util.List;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import org.jspecify.annotations.Nullable;

/**
 * A quantity that is written as one number and one unit. It is shown to four significant figures, in the largest unit of
 * its system that gives ten or more, or else in the smallest.
 *
 * <p>The table of units is made when it is first needed, since a command that asks one sum needs very few of them.
 */
final class UnitNotation<Q> implements Notation<Q> {
    private static final double FEWEST_SHOWN = 10;

    private final String name;
    private final String examples;
    private final Supplier<UnitTable<Q>> making;
    private volatile @Nullable UnitTable<Q> made;

    UnitNotation(String name, String examples, Supplier<UnitTable<Q>> making) {
        this.name = name;
        this.examples = examples;
        this.making = making;
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String examples() {
        return examples;
    }

    /** Two threads may both make it; the tables are alike. */
    private UnitTable<Q> units() {
        UnitTable<Q> units = made;
        if (units == null) {
            units = making.get();
            made = units;
        }
        return units;
    }

    @Override
    public Q read(String text, LengthUnit bareUnit) {
        Tokens tokens = Tokens.of(text, Plainly.a(name));
        double number = SignedNumber.take(tokens)
                .orElseThrow(() -> Plainly.isNot(tokens, this))
                .doubleValue();
        Q quantity = quantity(tokens, unit(tokens, bareUnit), number);
        refuseTooLittle(tokens, quantity);
        return quantity;
    }

    private UnitOf<Q> unit(Tokens tokens, LengthUnit bareUnit) {
        String rest = tokens.rest();
        String phrase = UnitPhrase.take(tokens);
        return phrase.isEmpty()
                ? units().ofBare(bareUnit).orElseThrow(() -> Plainly.needsUnit(tokens, this))
                : units().find(phrase).orElseThrow(() -> Plainly.unknownUnit(tokens, rest, symbols(), this));
    }

    private String symbols() {
        return units().all().map(UnitOf::symbol).collect(Collectors.joining(", "));
    }

    private Q quantity(Tokens tokens, UnitOf<Q> unit, double number) {
        try {
            return unit.of().apply(number);
        } catch (IllegalArgumentException tooLarge) {
            throw Plainly.tooLarge(tokens, this, tooLarge);
        }
    }

    private void refuseTooLittle(Tokens tokens, Q quantity) {
        UnitOf<Q> first = units().metric().getFirst();
        double least = units().least();
        if (first.count(quantity) < least) {
            throw new Unreadable(tokens.quoted() + " is less than " + Plainly.a(name) + " can be here: write "
                    + first.text(first.of().apply(least)) + " or more.");
        }
    }

    @Override
    public String text(Q quantity, LengthUnit first) {
        String main = shown(units().shownIn(first), quantity);
        String other = shown(units().shownIn(first.other()), quantity);
        return main.equals(other) ? main : main + " (" + other + ")";
    }

    private static <Q> String shown(List<UnitOf<Q>> units, Q quantity) {
        return units.reversed().stream()
                .filter(unit -> Math.abs(unit.count(quantity)) >= FEWEST_SHOWN)
                .findFirst()
                .orElse(units.getFirst())
                .text(quantity);
    }
}
