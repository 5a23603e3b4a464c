package chargehand.measure;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The units of one kind of quantity and what goes with them.
 *
 * @param metric the metric units to show it in, smallest first, at least one
 * @param imperial the inch units to show it in beside those, smallest first; may be empty
 * @param readOnly units that are read but not shown
 * @param bare what a number without a unit is taken as
 * @param least the least there can be, in the first metric unit
 * @param <Q> the quantity
 */
record UnitTable<Q>(
        List<UnitOf<Q>> metric, List<UnitOf<Q>> imperial, List<UnitOf<Q>> readOnly, Bare bare, double least) {
    /** What a number without a unit is taken as. */
    enum Bare {
        /** It could mean several things and is refused. */
        REFUSED,
        /** It is in the first metric unit. */
        FIRST,
        /** It is in the first unit of the system in which bare lengths are read. */
        AS_LENGTHS
    }

    UnitTable {
        metric = List.copyOf(metric);
        imperial = List.copyOf(imperial);
        readOnly = List.copyOf(readOnly);
    }

    /** A table of these metric units alone, without a least, that refuses a bare number. */
    static <Q> UnitTable<Q> of(List<UnitOf<Q>> metric) {
        return new UnitTable<>(metric, List.of(), List.of(), Bare.REFUSED, Double.NEGATIVE_INFINITY);
    }

    /** Shown in these inch units too. */
    UnitTable<Q> beside(List<UnitOf<Q>> units) {
        return new UnitTable<>(metric, units, readOnly, bare, least);
    }

    /** Read in these units too. */
    UnitTable<Q> alsoRead(List<UnitOf<Q>> units) {
        return new UnitTable<>(metric, imperial, units, bare, least);
    }

    UnitTable<Q> withBare(Bare meaning) {
        return new UnitTable<>(metric, imperial, readOnly, meaning, least);
    }

    /** Never less than this in the first metric unit. */
    UnitTable<Q> atLeast(double count) {
        return new UnitTable<>(metric, imperial, readOnly, bare, count);
    }

    Stream<UnitOf<Q>> all() {
        return Stream.of(metric, imperial, readOnly).flatMap(List::stream);
    }

    Optional<UnitOf<Q>> find(String phrase) {
        return all().filter(unit -> unit.phrases().contains(phrase)).findFirst();
    }

    /** The unit of a bare number where bare lengths are in {@code unit}; nothing when it is refused. */
    Optional<UnitOf<Q>> ofBare(LengthUnit unit) {
        return switch (bare) {
            case REFUSED -> Optional.empty();
            case FIRST -> Optional.of(metric.getFirst());
            case AS_LENGTHS -> Optional.of(shownIn(unit).getFirst());
        };
    }

    /** The units of one system to show it in; the metric ones when there are no others. */
    List<UnitOf<Q>> shownIn(LengthUnit unit) {
        return switch (unit) {
            case MILLIMETRE -> metric;
            case INCH -> imperial.isEmpty() ? metric : imperial;
        };
    }
}
