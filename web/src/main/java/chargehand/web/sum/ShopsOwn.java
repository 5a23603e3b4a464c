package chargehand.web.sum;

import chargehand.method.kit.Chuck;
import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.KitFiles;
import chargehand.method.kit.yaml.KitRead;
import chargehand.trade.holding.OwnedHolding;
import chargehand.trade.sum.Sum;
import chargehand.web.serving.Counter;
import java.util.EnumSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** What the shop's kit says to a field that was not sent at all; a field sent empty stays empty. */
final class ShopsOwn {
    private static final String OWNED = "owned";

    private final Counter counter;

    ShopsOwn(Counter counter) {
        this.counter = counter;
    }

    /** Writes in what the kit knows. */
    void fill(Sum sum, Map<String, String> written) {
        boolean asks = sum.fields().stream().anyMatch(field -> field.name().equals(OWNED));
        if (asks && !written.containsKey(OWNED)) {
            kit().map(ShopsOwn::holdings)
                    .filter(words -> !words.isEmpty())
                    .ifPresent(words -> written.put(OWNED, words));
        }
    }

    private Optional<Kit> kit() {
        return switch (KitFiles.read(counter.desk().keepTexts().texts().kit())) {
            case KitRead.Sound(Kit kit) -> Optional.of(kit);
            case KitRead.Refused refused -> Optional.empty();
        };
    }

    private static String holdings(Kit kit) {
        Set<OwnedHolding> owned = EnumSet.noneOf(OwnedHolding.class);
        kit.lathes().forEach(lathe -> lathe.holders().chucks().forEach(chuck -> owned.add(holding(chuck))));
        if (!kit.tooling().mandrels().isEmpty()) {
            owned.add(OwnedHolding.MANDREL);
        }
        return owned.stream().map(OwnedHolding::word).collect(Collectors.joining(", "));
    }

    /** Three or six jaws that move singly are not made; where a kit has them they are dialled like four. */
    private static OwnedHolding holding(Chuck chuck) {
        return chuck.isIndependent() ? OwnedHolding.FOUR_JAW : OwnedHolding.together(chuck.jaws());
    }
}
