package chargehand.measure;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * A quantity that is written as one number and one unit. It is shown to four significant figures, in the largest unit of
 * its system that gives ten or more, or else in the smallest.
 */
final class UnitNotation<Q> implements Notation<Q> {
    private static final double FEWEST_SHOWN = 10;

    private final String name;
    private final String examples;
    private final List<UnitOf<Q>> metric;
    private final List<UnitOf<Q>> imperial;
    private final List<UnitOf<Q>> readOnly;
    private final Function<LengthUnit, Optional<UnitOf<Q>>> bare;
    private final double least;

    private UnitNotation(Draft<Q> draft) {
        this.name = draft.name;
        this.examples = draft.examples;
        this.metric = draft.metric;
        this.imperial = draft.imperial;
        this.readOnly = draft.readOnly;
        this.bare = draft.bare;
        this.least = draft.least;
    }

    /**
     * Begins a notation.
     *
     * @param metric the metric units to show the quantity in, smallest first, at least one
     */
    static <Q> Draft<Q> of(String name, String examples, List<UnitOf<Q>> metric) {
        return new Draft<>(name, examples, List.copyOf(metric));
    }

    @Override
    public String name() {
        return name;
    }

    @Override
    public String examples() {
        return examples;
    }

    @Override
    public Q read(String text, LengthUnit bareUnit) {
        Tokens tokens = Tokens.of(text, Plainly.a(name));
        double number = SignedNumber.take(tokens)
                .orElseThrow(() -> Plainly.isNot(tokens, this))
                .doubleValue();
        Q quantity = quantity(tokens, unit(tokens, bareUnit), number);
        if (metric.getFirst().count(quantity) < least) {
            throw new Unreadable(tokens.quoted() + " is less than " + Plainly.a(name) + " can be here: write "
                    + metric.getFirst().text(metric.getFirst().of().apply(least)) + " or more.");
        }
        return quantity;
    }

    private UnitOf<Q> unit(Tokens tokens, LengthUnit bareUnit) {
        String rest = tokens.rest();
        String phrase = UnitPhrase.take(tokens);
        if (phrase.isEmpty()) {
            return bare.apply(bareUnit).orElseThrow(() -> Plainly.needsUnit(tokens, this));
        }
        return all().filter(unit -> unit.phrases().contains(phrase))
                .findFirst()
                .orElseThrow(() -> Plainly.unknownUnit(tokens, rest, symbols(), this));
    }

    private Q quantity(Tokens tokens, UnitOf<Q> unit, double number) {
        try {
            return unit.of().apply(number);
        } catch (IllegalArgumentException tooLarge) {
            throw Plainly.tooLarge(tokens, this, tooLarge);
        }
    }

    private Stream<UnitOf<Q>> all() {
        return Stream.of(metric, imperial, readOnly).flatMap(List::stream);
    }

    private String symbols() {
        return all().map(UnitOf::symbol).collect(Collectors.joining(", "));
    }

    @Override
    public String text(Q quantity, LengthUnit first) {
        String inMetric = shown(metric, quantity);
        if (imperial.isEmpty()) {
            return inMetric;
        }
        String inImperial = shown(imperial, quantity);
        return switch (first) {
            case MILLIMETRE -> inMetric + " (" + inImperial + ")";
            case INCH -> inImperial + " (" + inMetric + ")";
        };
    }

    private static <Q> String shown(List<UnitOf<Q>> units, Q quantity) {
        return units.reversed().stream()
                .filter(unit -> Math.abs(unit.count(quantity)) >= FEWEST_SHOWN)
                .findFirst()
                .orElse(units.getFirst())
                .text(quantity);
    }

    /** A notation being put together. */
    static final class Draft<Q> {
        private final String name;
        private final String examples;
        private final List<UnitOf<Q>> metric;
        private List<UnitOf<Q>> imperial = List.of();
        private List<UnitOf<Q>> readOnly = List.of();
        private Function<LengthUnit, Optional<UnitOf<Q>>> bare = unit -> Optional.empty();
        private double least = Double.NEGATIVE_INFINITY;

        private Draft(String name, String examples, List<UnitOf<Q>> metric) {
            this.name = name;
            this.examples = examples;
            this.metric = metric;
        }

        /** The inch units to show it in beside the metric ones, smallest first. */
        Draft<Q> beside(List<UnitOf<Q>> units) {
            imperial = List.copyOf(units);
            return this;
        }

        /** Units that are read but not shown. */
        Draft<Q> alsoRead(List<UnitOf<Q>> units) {
            readOnly = List.copyOf(units);
            return this;
        }

        /** A bare number, otherwise refused, is in the first metric unit. */
        Draft<Q> bareIsFirst() {
            bare = unit -> Optional.of(metric.getFirst());
            return this;
        }

        /** A bare number, otherwise refused, is in the first unit of the system in which bare lengths are read. */
        Draft<Q> bareFollowsLengths() {
            bare = unit -> Optional.of(
                    switch (unit) {
                        case MILLIMETRE -> metric.getFirst();
                        case INCH -> imperial.getFirst();
                    });
            return this;
        }

        /** The least there can be, in the first metric unit. */
        Draft<Q> atLeast(double count) {
            least = count;
            return this;
        }

        UnitNotation<Q> notation() {
            return new UnitNotation<>(this);
        }
    }
}
