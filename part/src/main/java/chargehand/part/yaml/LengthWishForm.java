package chargehand.part.yaml;

import chargehand.measure.Unreadable;
import chargehand.part.End;
import chargehand.part.FaceAt;
import chargehand.part.LengthWish;
import chargehand.part.yaml.tree.Form;
import chargehand.part.yaml.tree.ReadingFault;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads and writes what is wanted of lengths on a drawing. */
final class LengthWishForm {
    static final String KEY = "lengths";
    private static final FaceAt STAND_IN = new FaceAt("", End.A);

    private LengthWishForm() {}

    static List<LengthWish> read(Form form) {
        return form.rows(KEY, (wish, number) -> wish(wish));
    }

    private static Optional<LengthWish> wish(Form form) {
        FaceAt from = form.value("from", LengthWishForm::face, STAND_IN);
        FaceAt to = form.value("to", LengthWishForm::face, STAND_IN);
        Optional<LengthWish.Giving> giving = form.find("give", LengthWishForm::giving);
        Optional<LengthWish.LengthSide> side = form.find("side", LengthWishForm::side);
        Optional<LengthWish.Tier> tier = form.find("tier", LengthWishForm::tier);
        LengthWish wish = new LengthWish(from, to, giving, side, tier);
        if (wish.isEmpty() && form.isSound()) {
            form.refuse(
                    ReadingFault.UNREADABLE,
                    "This says nothing of what is wanted of the length: write give, side or tier.");
        }
        return form.build(() -> wish);
    }

    private static FaceAt face(String text) {
        int comma = text.lastIndexOf(',');
        String end = text.substring(comma + 1).strip().toUpperCase(Locale.ROOT);
        if (comma < 1 || !(end.equals("A") || end.equals("B"))) {
            throw new Unreadable(
                    "A face is named by a section and the end of it that is nearer A or B: write collar, B.");
        }
        return new FaceAt(text.substring(0, comma).strip(), End.valueOf(end));
    }

    private static LengthWish.Giving giving(String text) {
        return Arrays.stream(LengthWish.Giving.values())
                .filter(known -> known.text().equals(text.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new Unreadable("A length is given plain, in brackets or left out."));
    }

    private static LengthWish.LengthSide side(String text) {
        return one(LengthWish.LengthSide.values(), text, "A length stands above the view or below it.");
    }

    private static LengthWish.Tier tier(String text) {
        return one(LengthWish.Tier.values(), text, "A length stands nearer the part than others or farther out.");
    }

    private static <E extends Enum<E>> E one(E[] known, String text, String say) {
        return Arrays.stream(known)
                .filter(value -> word(value).equals(text.toLowerCase(Locale.ROOT)))
                .findFirst()
                .orElseThrow(() -> new Unreadable(say));
    }

    private static String word(Enum<?> value) {
        return value.name().toLowerCase(Locale.ROOT);
    }

    static void write(List<LengthWish> wishes, YamlLines lines) {
        if (!wishes.isEmpty()) {
            lines.begin(KEY);
            wishes.forEach(wish -> write(wish, lines));
            lines.end();
        }
    }

    private static void write(LengthWish wish, YamlLines lines) {
        lines.entry().words("from", wish.from().text());
        lines.words("to", wish.to().text());
        wish.giving().ifPresent(giving -> lines.words("give", giving.text()));
        wish.side().ifPresent(side -> lines.words("side", word(side)));
        wish.tier().ifPresent(tier -> lines.words("tier", word(tier)));
        lines.endEntry();
    }
}
