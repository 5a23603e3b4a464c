package chargehand.method.replay;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;

/** How many mutants of each kind were caught. */
final class Tally {
    private final Map<String, Counts> kinds = new TreeMap<>();
    private final List<String> missed = new ArrayList<>();

    private record Counts(int caught, int missed, int harmless) {
        Counts plus(Counts other) {
            return new Counts(caught + other.caught, missed + other.missed, harmless + other.harmless);
        }

        int broken() {
            return caught + missed;
        }
    }

    void count(String kind, String good, Mutant mutant, boolean made) {
        boolean isMissed = made && !mutant.harmless();
        if (isMissed) {
            missed.add(kind + " of " + good);
        }
        var one = new Counts(!made && !mutant.harmless() ? 1 : 0, isMissed ? 1 : 0, mutant.harmless() ? 1 : 0);
        kinds.merge(kind, one, Counts::plus);
    }

    private Counts all() {
        return kinds.values().stream().reduce(new Counts(0, 0, 0), Counts::plus);
    }

    /** Mutants that are not harmless by rule. */
    int broken() {
        return all().broken();
    }

    double caughtShare() {
        return (double) all().caught() / broken();
    }

    /** The rates by kind, as a page. */
    String table(int methods) {
        var table = new StringBuilder("""
                # Methods broken on purpose

                Written by MutationTest of module method (-Dgolden.rewrite=true). One thing is changed in a good method,
                somewhere at random; the replay must not let it pass. What does no harm is told from what was missed by a rule
                that each kind states in its code, judged from the change alone before the replay, never from what the
                replay said; harmless ones count neither way.

                """);
        table.append(methods).append(" good methods: by hand, of the demo parts, of random parts.\n\n");
        table.append("| what is changed | broken | caught | missed | caught of broken | harmless by rule |\n");
        table.append("| --- | ---: | ---: | ---: | ---: | ---: |\n");
        kinds.forEach(
                (kind, counts) -> table.append(row(kind.toLowerCase(Locale.ROOT).replace('_', ' '), counts)));
        return table.append(row("all", all())).toString();
    }

    private static String row(String kind, Counts counts) {
        String share = counts.broken() == 0
                ? ""
                : String.format(Locale.ROOT, "%.1f %%", 100.0 * counts.caught() / counts.broken());
        return String.format(
                Locale.ROOT,
                "| %s | %d | %d | %d | %s | %d |%n",
                kind,
                counts.broken(),
                counts.caught(),
                counts.missed(),
                share,
                counts.harmless());
    }

    @Override
    public String toString() {
        return "let pass: " + missed;
    }
}
