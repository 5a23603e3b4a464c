package chargehand.book.shop;

import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The descriptions of the shop's kit and rack, as files by name, as they were at one time. Every edition is kept, so that a
 * method can be read beside the kit it was worked out for.
 *
 * @param edition counts the changes, 0 before there is any text
 * @param files file names such as {@code kit/lathe.yaml} to what is written in them, sorted by name
 */
public record ShopTexts(int edition, Map<String, String> files) {
    /** Before there is any text. */
    public static final ShopTexts NONE = new ShopTexts(0, Map.of());

    /** The file that lists the stock. */
    public static final String RACK = "rack.yaml";

    /** How the names of the files that describe machines and tools begin. */
    public static final String KIT = "kit/";

    public ShopTexts {
        files = Collections.unmodifiableMap(new TreeMap<>(files));
    }

    /** The text of the rack, where there is one. */
    public Optional<String> rack() {
        return Optional.ofNullable(files.get(RACK));
    }

    /** The kit's files, without the folder in their names. */
    public Map<String, String> kit() {
        var kit = new TreeMap<String, String>();
        files.forEach((name, text) -> {
            if (name.startsWith(KIT)) {
                kit.put(name.substring(KIT.length()), text);
            }
        });
        return kit;
    }
}
