package chargehand.book.store;

import java.text.Normalizer;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;

/**
 * The words of a text as a search sees them: runs of letters and figures, small letters, without accents.
 *
 * @param words in the order of the text
 */
public record Words(List<String> words) {
    private static final Pattern ACCENTS = Pattern.compile("\\p{M}+");
    private static final Pattern BETWEEN = Pattern.compile("[^\\p{L}\\p{N}]+");

    public Words {
        words = List.copyOf(words);
    }

    public static Words of(String text) {
        String plain =
                ACCENTS.matcher(Normalizer.normalize(text, Normalizer.Form.NFD)).replaceAll("");
        return new Words(BETWEEN.splitAsStream(plain.toLowerCase(Locale.ROOT))
                .filter(word -> !word.isEmpty())
                .toList());
    }

    /** Whether each of these words begins some word of the text. */
    public boolean allBegin(Words text) {
        return words.stream().allMatch(word -> text.words().stream().anyMatch(whole -> whole.startsWith(word)));
    }
}
