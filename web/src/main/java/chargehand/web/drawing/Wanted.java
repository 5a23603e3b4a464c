package chargehand.web.drawing;

import chargehand.drawing.dimension.GivenLengths.Given;
import chargehand.part.Body;
import chargehand.part.FaceAt;
import chargehand.part.LengthWish;
import chargehand.part.LengthWish.Giving;
import chargehand.part.LengthWish.LengthSide;
import chargehand.part.LengthWish.Tier;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a key beside a length sends: a word and two faces, such as {@code farther:0:3}, or several joined by a plus. */
final class Wanted {
    static final String AND = "+";

    private static final String USUAL = "usual";
    private static final int MOST_FIGURES = 3;

    private Wanted() {}

    static String sends(Enum<?> what, Given length) {
        return sent(word(what), length);
    }

    static String usual(Given length) {
        return sent(USUAL, length);
    }

    static String added(String from, String to) {
        return word(Giving.PLAIN) + ":" + from + ":" + to;
    }

    private static String sent(String word, Given length) {
        return word + ":" + length.from() + ":" + length.to();
    }

    private static String word(Enum<?> what) {
        return what.name().toLowerCase(Locale.ROOT);
    }

    /** The wishes of a part with what was sent; empty where that is nothing of this part. */
    static Optional<List<LengthWish>> applied(String sent, Part part, Body.Turned body) {
        Optional<List<LengthWish>> wishes = Optional.of(part.drafting().lengths());
        for (String one : sent.split("\\+", -1)) {
            wishes = wishes.flatMap(before -> one(one.split(":", -1), before, body));
        }
        return wishes;
    }

    private static Optional<List<LengthWish>> one(String[] sent, List<LengthWish> before, Body.Turned body) {
        if (sent.length != 3 || !isFace(sent[1], body) || !isFace(sent[2], body)) {
            return Optional.empty();
        }
        int from = Math.min(Integer.parseInt(sent[1]), Integer.parseInt(sent[2]));
        int to = Math.max(Integer.parseInt(sent[1]), Integer.parseInt(sent[2]));
        int at = at(before, body, List.of(from, to));
        LengthWish wish = at < 0 ? LengthWish.none(FaceAt.of(body, from), FaceAt.of(body, to)) : before.get(at);
        return changed(sent[0], wish).map(changed -> put(before, at, changed));
    }

    private static boolean isFace(String text, Body.Turned body) {
        return text.matches("[0-9]{1," + MOST_FIGURES + "}")
                && Integer.parseInt(text) <= body.outside().size();
    }

    private static int at(List<LengthWish> wishes, Body.Turned body, List<Integer> faces) {
        for (int i = 0; i < wishes.size(); i++) {
            LengthWish wish = wishes.get(i);
            List<Integer> own = Stream.of(wish.from(), wish.to())
                    .flatMap(face -> face.number(body).stream())
                    .sorted()
                    .toList();
            if (own.equals(faces)) {
                return i;
            }
        }
        return -1;
    }

    private static Optional<LengthWish> changed(String word, LengthWish wish) {
        if (word.equals(USUAL)) {
            return Optional.of(LengthWish.none(wish.from(), wish.to()));
        }
        Stream<LengthWish> ways = Stream.of(
                        named(Giving.values(), word).map(wish::with),
                        named(LengthSide.values(), word).map(wish::with),
                        named(Tier.values(), word).map(wish::with))
                .flatMap(Optional::stream);
        return ways.findFirst();
    }

    private static <E extends Enum<E>> Optional<E> named(E[] values, String word) {
        return Arrays.stream(values).filter(value -> word(value).equals(word)).findFirst();
    }

    private static List<LengthWish> put(List<LengthWish> before, int at, LengthWish wish) {
        List<LengthWish> wishes = new ArrayList<>(before);
        if (at >= 0) {
            wishes.remove(at);
        }
        if (!wish.isEmpty()) {
            wishes.add(at < 0 ? wishes.size() : at, wish);
        }
        return wishes;
    }
}
