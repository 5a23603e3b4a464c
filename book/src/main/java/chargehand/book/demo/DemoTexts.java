package chargehand.book.demo;

import chargehand.book.shop.ShopTexts;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * The files of a workshop, read already.
 *
 * @param jobs the list of jobs, as {@code jobs.yaml}
 * @param parts drawings by file name, such as {@code union.yaml}
 * @param kit descriptions of machines and tools by file name, such as {@code mill.yaml}
 * @param rack the stock, as {@code rack.yaml}
 */
public record DemoTexts(String jobs, Map<String, String> parts, Map<String, String> kit, String rack) {
    /** The name of the list of jobs. */
    public static final String JOBS = "jobs.yaml";

    public DemoTexts {
        parts = Map.copyOf(parts);
        kit = Map.copyOf(kit);
    }

    /** The drawing of this name. */
    Optional<String> part(String name) {
        return Optional.ofNullable(parts.get(name + ".yaml"));
    }

    /** Kit and rack under the names they have in a book. */
    Map<String, String> shopFiles() {
        var files = new TreeMap<String, String>();
        kit.forEach((name, text) -> files.put(ShopTexts.KIT + name, text));
        files.put(ShopTexts.RACK, rack);
        return files;
    }
}
