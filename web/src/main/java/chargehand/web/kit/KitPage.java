package chargehand.web.kit;

import chargehand.book.shop.ShopTexts;
import chargehand.method.kit.yaml.FileFault;
import chargehand.method.kit.yaml.KitFiles;
import chargehand.method.kit.yaml.KitRead;
import chargehand.method.rack.Piece;
import chargehand.method.rack.yaml.RackFile;
import chargehand.method.rack.yaml.RackRead;
import chargehand.web.serving.Counter;
import chargehand.web.serving.Frame;
import chargehand.web.serving.Frame.Section;
import chargehand.web.serving.Pages;
import chargehand.web.serving.Views;
import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;

/** What the shop has: its machines with their limits, and what lies on the rack. */
public final class KitPage implements Pages {
    private final Counter counter;
    private final Views views;

    public KitPage(Counter counter, Views views) {
        this.counter = counter;
        this.views = views;
    }

    /** A piece on the rack. */
    public record PieceFace(
            String name,
            String place,
            String material,
            String sure,
            String shape,
            String length,
            String condition,
            String note) {
        static PieceFace of(Piece piece) {
            String times = piece.count() == 1 ? "" : piece.count() + " × ";
            return new PieceFace(
                    piece.name(),
                    piece.place(),
                    piece.material(),
                    word(piece.sure()),
                    piece.shape().says(),
                    times + piece.length().withUnit(),
                    piece.condition().name().toLowerCase(Locale.ROOT),
                    piece.note());
        }

        private static String word(Piece.Sureness sure) {
            return switch (sure) {
                case CERTIFIED -> "certificate on file";
                case MARKED -> "marked";
                case TAKEN_FOR -> "taken for it";
                case UNKNOWN -> "not known";
            };
        }
    }

    /**
     * The page.
     *
     * @param faults why some of it cannot be read, each with its file and line
     */
    public record Sheet(
            Frame frame, List<MachineFace> machines, List<PieceFace> pieces, List<String> faults, int edition) {}

    @Override
    public void add(RoutesConfig routes) {
        routes.get("/kit", this::show);
    }

    private void show(Context context) {
        ShopTexts texts = counter.desk().keepTexts().texts();
        KitRead kit = KitFiles.read(texts.kit());
        RackRead rack = RackFile.read(texts.rack().orElse(""));
        List<String> faults = texts.edition() == 0
                ? List.of("Nothing is written down of the kit and the rack yet.")
                : Stream.concat(faults(kit).stream(), faults(rack).stream()).toList();
        views.show(
                context,
                "kit",
                new Sheet(
                        counter.frame("Kit and rack", Section.KIT),
                        machines(kit),
                        pieces(rack),
                        faults,
                        texts.edition()));
    }

    private static List<MachineFace> machines(KitRead kit) {
        return switch (kit) {
            case KitRead.Sound sound ->
                sound.kit().machines().stream().map(MachineFace::of).toList();
            case KitRead.Refused refused -> List.of();
        };
    }

    private static List<String> faults(KitRead kit) {
        return switch (kit) {
            case KitRead.Sound sound -> List.of();
            case KitRead.Refused refused ->
                refused.faults().stream().map(KitPage::say).toList();
        };
    }

    private static String say(FileFault fault) {
        String file = fault.file().isEmpty()
                ? "The kit"
                : fault.file() + ", line " + fault.fault().line();
        return file + ": " + fault.fault().say();
    }

    private static List<PieceFace> pieces(RackRead rack) {
        return switch (rack) {
            case RackRead.Sound sound ->
                sound.rack().pieces().stream().map(PieceFace::of).toList();
            case RackRead.Refused refused -> List.of();
        };
    }

    private static List<String> faults(RackRead rack) {
        return switch (rack) {
            case RackRead.Sound sound -> List.of();
            case RackRead.Refused refused ->
                refused.faults().stream()
                        .map(fault -> "rack.yaml, line " + fault.line() + ": " + fault.say())
                        .toList();
        };
    }
}
