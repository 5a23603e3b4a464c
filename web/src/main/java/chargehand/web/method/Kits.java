package chargehand.web.method;

import chargehand.book.shop.ShopTexts;
import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.KitFiles;
import chargehand.method.kit.yaml.KitRead;
import chargehand.web.serving.Counter;
import java.util.Optional;

/** The kit that a method was worked out for, as far as it can be read. */
public final class Kits {
    private Kits() {}

    /** The kit of one edition of the shop's texts. */
    public static Optional<Kit> of(Counter counter, int edition) {
        return counter.desk()
                .keepTexts()
                .texts(edition)
                .map(ShopTexts::kit)
                .map(KitFiles::read)
                .flatMap(Kits::sound);
    }

    private static Optional<Kit> sound(KitRead read) {
        return switch (read) {
            case KitRead.Sound(Kit kit) -> Optional.of(kit);
            case KitRead.Refused refused -> Optional.empty();
        };
    }

    /** What the cross dial of a machine counts, in words; empty for anything but a lathe. */
    public static String crossReads(Optional<Kit> kit, String machine) {
        return kit.map(found -> found.crossReads(machine)).orElse("");
    }
}
