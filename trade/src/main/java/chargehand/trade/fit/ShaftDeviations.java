package chargehand.trade.fit;

import chargehand.measure.Length;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.Optional;
import java.util.Set;

/** Fundamental deviations of shafts, from the tables of ISO 286-1. */
final class ShaftDeviations {
    private static final Table TABLE = Table.read(ShaftDeviations.class, "iso286-shafts.csv");
    private static final Table UNRULY = Table.read(ShaftDeviations.class, "iso286-j.csv");
    private static final Set<String> BELOW = Set.of("a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h");
    private static final Length LEAST_FOR_A_AND_B = Length.mm(1);
    private static final int K_FROM = 4;
    private static final int K_TO = 7;

    private ShaftDeviations() {}

    static Source source() {
        return TABLE.source();
    }

    static Deviation of(Length nominal, ToleranceClass wanted, Working working) {
        Deviation deviation = switch (wanted.letter()) {
            case "js" -> Deviation.lower(halfGrade(nominal, wanted, working).negated());
            case "j" -> Deviation.lower(unruly(nominal, wanted, working));
            case "k" -> Deviation.lower(k(nominal, wanted.grade()));
            default -> listed(nominal, wanted);
        };
        if (!wanted.letter().startsWith("j")) {
            boolean upper = deviation.end() == Deviation.End.UPPER;
            working.fact(
                    "Fundamental deviation of shaft " + wanted.letter() + ", the " + (upper ? "upper" : "lower")
                            + " one",
                    (upper ? "es = " : "ei = ") + Microns.signed(deviation.value()),
                    source());
        }
        return deviation;
    }

    /** The deviation of a letter that has the same one in every grade. */
    static Deviation listed(Length nominal, ToleranceClass wanted) {
        Length value = find(nominal, wanted.letter()).orElseThrow(() -> notGiven(wanted));
        if ((wanted.letter().equals("a") || wanted.letter().equals("b")) && !nominal.isMoreThan(LEAST_FOR_A_AND_B)) {
            throw notGiven(wanted);
        }
        return BELOW.contains(wanted.letter()) ? Deviation.upper(value) : Deviation.lower(value);
    }

    /** k lies above the line only in the grades that fits use; everywhere else it starts at the nominal size. */
    static Length k(Length nominal, int grade) {
        return grade >= K_FROM && grade <= K_TO ? find(nominal, "k").orElse(Length.ZERO) : Length.ZERO;
    }

    /** Half of the tolerance, for js and JS: the zone lies evenly about the nominal size. */
    static Length halfGrade(Length nominal, ToleranceClass wanted, Working working) {
        Length half = StandardTolerances.of(nominal, wanted.grade()).half();
        working.step(
                wanted + " lies evenly about the size",
                "deviation = ± " + wanted.gradeName() + " / 2",
                "± " + Microns.plain(StandardTolerances.of(nominal, wanted.grade())) + " / 2",
                "± " + Microns.say(half),
                StandardTolerances.source());
        return half;
    }

    /** The deviation of j or J, which follow no formula and exist in a few grades only. */
    static Length unruly(Length nominal, ToleranceClass wanted, Working working) {
        Length value = UNRULY.rows().stream()
                .filter(row -> SizeRange.of(row).contains(nominal))
                .findFirst()
                .filter(row -> row.columns().contains(wanted.toString()))
                .flatMap(row -> row.findNumber(wanted.toString()))
                .map(Microns::of)
                .orElseThrow(() -> notGiven(wanted));
        working.fact(
                "Fundamental deviation of " + wanted + ", the " + (wanted.hole() ? "upper" : "lower") + " one",
                (wanted.hole() ? "ES = " : "ei = ") + Microns.signed(value),
                UNRULY.source());
        return value;
    }

    private static Optional<Length> find(Length nominal, String letter) {
        return row(nominal).findNumber(letter).map(Microns::of);
    }

    private static Row row(Length nominal) {
        return TABLE.rows().stream()
                .filter(row -> SizeRange.of(row).contains(nominal))
                .findFirst()
                .orElseThrow(() -> new Unreadable("ISO 286 ends at 3150 mm: give a smaller size."));
    }

    static Unreadable notGiven(ToleranceClass wanted) {
        return new Unreadable("ISO 286 gives no " + wanted + " at this size: choose a class that it has, such as "
                + (wanted.hole() ? "H7." : "h6."));
    }
}
