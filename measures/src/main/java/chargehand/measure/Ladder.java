package chargehand.measure;

import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/**
 * A quantity written in steps of ever smaller units, as {@code 5° 30' 15"} or {@code 1 h 50 min}. Only the last number
 * may be broken, and each after the first stays below one of the unit before it. A last number without a unit takes
 * the one below the unit before it ({@code 1 h 50}), unless it is a vulgar fraction, which could belong to either.
 */
final class Ladder {
    private final Notation<?> notation;
    private final List<Rung> rungs;

    /**
     * One unit of a ladder.
     *
     * @param lowest how many of the lowest unit make one
     * @param spellings the words and signs for it, in small letters
     */
    record Rung(int lowest, List<String> spellings) {
        Rung(int lowest, String... spellings) {
            this(lowest, List.of(spellings));
        }
    }

    private record Step(Numeral count, Rung rung, boolean named) {
        BigFraction lowest() {
            return count.value().multiply(rung.lowest());
        }

        boolean leadsTo(Step next) {
            return named
                    && count.isWhole()
                    && next.rung.lowest() < rung.lowest()
                    && next.lowest().compareTo(BigFraction.of(rung.lowest())) < 0;
        }
    }

    /** A ladder of units for a notation, the greatest first. */
    Ladder(Notation<?> notation, Rung... rungs) {
        this.notation = notation;
        this.rungs = List.of(rungs);
    }

    /**
     * Reads the steps that come next.
     *
     * @param first the number of the first step, already read
     * @param bare the unit of a first number without one, or nothing if such a number is refused
     * @return the quantity in the lowest unit
     */
    BigFraction climb(Numeral first, Optional<Rung> bare, Tokens tokens) {
        Step step = step(first, bare, tokens);
        BigFraction total = step.lowest();
        for (var next = Numeral.take(tokens); next.isPresent(); next = Numeral.take(tokens)) {
            Numeral count = next.get();
            Step lower = step(count, below(step.rung()).filter(rung -> !count.isVulgar()), tokens);
            if (!step.leadsTo(lower)) {
                throw Plainly.isNot(tokens, notation);
            }
            total = total.add(lower.lowest());
            step = lower;
        }
        return total;
    }

    private Step step(Numeral count, Optional<Rung> bare, Tokens tokens) {
        Optional<Rung> named = tokens.peek().flatMap(this::find);
        tokens.skip(named.isPresent() ? 1 : 0);
        Rung rung = named.or(() -> bare).orElseThrow(() -> Plainly.noUnit(tokens, notation));
        return new Step(count, rung, named.isPresent());
    }

    private Optional<Rung> find(Token token) {
        return rungs.stream()
                .filter(rung -> rung.spellings().contains(token.small()))
                .findFirst();
    }

    private Optional<Rung> below(Rung rung) {
        return rungs.stream().filter(other -> other.lowest() < rung.lowest()).findFirst();
    }
}
