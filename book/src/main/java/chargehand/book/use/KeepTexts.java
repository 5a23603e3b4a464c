package chargehand.book.use;

import chargehand.book.Changed;
import chargehand.book.Entered;
import chargehand.book.Objection;
import chargehand.book.Signed;
import chargehand.book.Wording;
import chargehand.book.shop.ShopTexts;
import chargehand.book.store.Book;
import chargehand.book.store.Ledger;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.regex.Pattern;

/**
 * Keeps the descriptions of the shop's kit and rack as they are written, so that a shop is one book. Every edition stays
 * readable.
 */
public final class KeepTexts {
    private static final Pattern NAME = Pattern.compile("rack\\.yaml|kit/[a-z0-9][a-z0-9_-]{0,60}\\.yaml");
    private static final int LONGEST = 400_000;

    private final Book book;
    private final Clock clock;

    public KeepTexts(Book book, Clock clock) {
        this.book = book;
        this.clock = clock;
    }

    /** The kit and rack as they are now. */
    public ShopTexts texts() {
        return book.read(ledger -> ledger.shop().texts());
    }

    /** The kit and rack as they were in one edition; empty when there was none of that number. */
    public Optional<ShopTexts> texts(int edition) {
        return book.read(ledger -> ledger.shop().texts(edition));
    }

    /**
     * The texts with one file written so.
     *
     * @param name {@code rack.yaml}, or {@code kit/NAME.yaml} for a machine or the tooling
     * @param basedOn the edition that was in front of the person who wrote
     */
    public Changed<ShopTexts> write(String name, String text, int basedOn, String who) {
        return replace(with(texts(), name, text), basedOn, who);
    }

    private static Map<String, String> with(ShopTexts texts, String name, String text) {
        var files = new TreeMap<>(texts.files());
        files.put(name, text);
        return files;
    }

    /** The texts with these files in the place of all there were; unchanged ones make no new edition. */
    public Changed<ShopTexts> replace(Map<String, String> files, int basedOn, String who) {
        List<Objection> objections = objections(files, who);
        return objections.isEmpty()
                ? book.change(ledger -> replace(ledger, files, basedOn, Signed.now(who, clock)))
                : Entered.refused(objections);
    }

    private static Changed<ShopTexts> replace(Ledger ledger, Map<String, String> files, int basedOn, Signed by) {
        ShopTexts now = ledger.shop().texts();
        if (now.edition() != basedOn) {
            return new Changed.Overtaken<>(now);
        }
        if (now.files().equals(files)) {
            return Entered.done(now);
        }
        ShopTexts next = new ShopTexts(basedOn + 1, files);
        ledger.shop().add(next, by);
        return Entered.done(next);
    }

    private static List<Objection> objections(Map<String, String> files, String who) {
        var objections = new ArrayList<Objection>();
        Entering.whoObjection(who).ifPresent(objections::add);
        new TreeMap<>(files).forEach((name, text) -> {
            nameObjection(name).ifPresent(objections::add);
            new Wording(name, "The text of " + name, LONGEST).objectionTo(text).ifPresent(objections::add);
        });
        return objections;
    }

    private static Optional<Objection> nameObjection(String name) {
        return NAME.matcher(name).matches()
                ? Optional.empty()
                : Optional.of(new Objection(
                        "name",
                        "A file is called rack.yaml, or kit/NAME.yaml with a name of small"
                                + " letters, figures and hyphens, not '" + name + "'."));
    }
}
