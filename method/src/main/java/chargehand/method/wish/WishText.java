package chargehand.method.wish;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads wishes as people write them, with the names of one shop and one part. */
public final class WishText {
    private static final String WITH = "with ";
    private static final String WITHOUT = "without ";
    private static final String STOCK = "stock ";
    private static final String GRIP = "grip on ";
    private static final String BEFORE = " before ";
    private static final String OF = " of ";
    private static final List<String> PARTING = List.of("parting off", "parting");
    private static final int MOST_NAMED = 12;

    private final Names names;

    public WishText(Names names) {
        this.names = names;
    }

    /** What became of a text. */
    public sealed interface Read {
        record Understood(Wish wish) implements Read {}

        /** Why not, and what would do. */
        record NotUnderstood(String say) implements Read {}
    }

    /** The wish that a text says, beginning with {@code with} or {@code without}; capitals do not matter. */
    public Read read(String text) {
        String written = text.strip().replaceAll("\\s+", " ");
        if (written.regionMatches(true, 0, WITHOUT, 0, WITHOUT.length())) {
            return without(written.substring(WITHOUT.length()));
        }
        if (written.regionMatches(true, 0, WITH, 0, WITH.length())) {
            return with(written.substring(WITH.length()));
        }
        return new Read.NotUnderstood("What is asked of a method begins with 'with' or 'without', not '" + text + "'.");
    }

    /** Every text, or why some are not understood. */
    public sealed interface All {
        record Understood(Wishes wishes) implements All {}

        /** One sentence for each that was not. */
        record NotUnderstood(List<String> says) implements All {}
    }

    public All readAll(List<String> texts) {
        var wishes = new ArrayList<Wish>();
        var says = new ArrayList<String>();
        for (String text : texts) {
            switch (read(text)) {
                case Read.Understood(Wish wish) -> wishes.add(wish);
                case Read.NotUnderstood(String say) -> says.add(say);
            }
        }
        return says.isEmpty() ? new All.Understood(new Wishes(wishes)) : new All.NotUnderstood(says);
    }

    private Read with(String what) {
        if (starts(what, STOCK)) {
            return piece(what)
                    .<Read>map(piece -> understood(new Wish.FromPiece(piece)))
                    .orElseGet(() -> noPiece(what));
        }
        if (starts(what, GRIP)) {
            return grip(what)
                    .<Read>map(grip -> understood(new Wish.HeldBy(grip)))
                    .orElseGet(() -> noGrip(what));
        }
        return order(what)
                .<Read>map(WishText::understood)
                .orElseGet(() -> new Read.NotUnderstood("'with " + what
                        + "' is not understood. What would do: with stock NAME, with grip on FEATURE, or with FEATURE before"
                        + " FEATURE; features are " + list(names.features()) + "."));
    }

    private Read without(String what) {
        if (PARTING.stream().anyMatch(what::equalsIgnoreCase)) {
            return understood(new Wish.WithoutParting());
        }
        if (starts(what, STOCK)) {
            return piece(what)
                    .<Read>map(piece -> understood(new Wish.NotFromPiece(piece)))
                    .orElseGet(() -> noPiece(what));
        }
        if (starts(what, GRIP)) {
            return grip(what)
                    .<Read>map(grip -> understood(new Wish.NotHeldBy(grip)))
                    .orElseGet(() -> noGrip(what));
        }
        return machine(what)
                .or(() -> holder(what))
                .<Read>map(WishText::understood)
                .orElseGet(() -> new Read.NotUnderstood("'without " + what
                        + "' is not understood. What would do: without parting off, without stock NAME, without grip on"
                        + " FEATURE, without a machine ("
                        + list(List.copyOf(names.holders().keySet()))
                        + "), or without what holds work on it, such as 'without centres of small lathe'."));
    }

    private static Read understood(Wish wish) {
        return new Read.Understood(wish);
    }

    private static boolean starts(String what, String word) {
        return what.regionMatches(true, 0, word, 0, word.length());
    }

    private Optional<String> piece(String what) {
        return names.piece(what.substring(STOCK.length()));
    }

    private Optional<String> grip(String what) {
        return names.grip(what.substring(GRIP.length()));
    }

    private Optional<Wish> machine(String what) {
        return names.machine(what).map(Wish.WithoutMachine::new);
    }

    /** {@code 4-jaw of large lathe}, or the holder alone where only one machine has it. */
    private Optional<Wish> holder(String what) {
        for (int at = what.indexOf(OF); at >= 0; at = what.indexOf(OF, at + 1)) {
            String holder = what.substring(0, at);
            Optional<Wish> wish = names.machine(what.substring(at + OF.length()))
                    .flatMap(machine ->
                            names.holder(machine, holder).map(known -> new Wish.WithoutHolder(machine, known)));
            if (wish.isPresent()) {
                return wish;
            }
        }
        List<String> machines = names.machinesWith(what);
        return machines.size() == 1
                ? names.holder(machines.getFirst(), what)
                        .map(known -> new Wish.WithoutHolder(machines.getFirst(), known))
                : Optional.empty();
    }

    private Optional<Wish> order(String what) {
        for (int at = what.indexOf(BEFORE); at >= 0; at = what.indexOf(BEFORE, at + 1)) {
            Optional<String> first = names.feature(what.substring(0, at));
            Optional<String> then = names.feature(what.substring(at + BEFORE.length()));
            if (first.isPresent() && then.isPresent() && !first.equals(then)) {
                return Optional.of(new Wish.Before(first.get(), then.get()));
            }
        }
        return Optional.empty();
    }

    private Read noPiece(String what) {
        return new Read.NotUnderstood("There is no piece '" + what.substring(STOCK.length()) + "' on the rack; it has "
                + list(names.pieces()) + ".");
    }

    private Read noGrip(String what) {
        return new Read.NotUnderstood("The part has no section or bore '" + what.substring(GRIP.length())
                + "' to hold it by; it has " + list(names.grips()) + ".");
    }

    private static String list(List<String> all) {
        String some = String.join(", ", all.stream().limit(MOST_NAMED).toList());
        return all.isEmpty()
                ? "none"
                : all.size() > MOST_NAMED ? some + " and " + (all.size() - MOST_NAMED) + " more" : some;
    }
}
