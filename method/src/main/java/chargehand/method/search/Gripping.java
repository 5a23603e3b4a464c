package chargehand.method.search;

import chargehand.method.holding.Choice;
import chargehand.method.work.Standing;
import java.util.Optional;

/** By what feature of the part a holding grips. */
final class Gripping {
    private Gripping() {}

    /** The name of the finished section or bore; empty for raw stock and for centres. */
    static Optional<String> feature(Standing work, Choice choice) {
        return switch (choice.gripped()) {
            case Choice.Gripped.OnSection section ->
                Optional.of(work.shape().section(section.index()).name());
            case Choice.Gripped.OnBore bore ->
                Optional.of(work.shape().body().inside().get(bore.index()).name());
            case Choice.Gripped.Raw raw -> Optional.empty();
            case Choice.Gripped.OnCentres centres -> Optional.empty();
            case Choice.Gripped.OnFace face -> Optional.empty();
        };
    }
}
