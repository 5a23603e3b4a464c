package chargehand.part.yaml.tree;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;

/** Finds the words that a mistyped one may have been meant to be. */
final class NearWords {
    private static final int MOST_NAMED = 3;
    private static final int LONGEST = 40;

    private NearWords() {}

    /** The known words within a letter or two of a word, or beginning like it, nearest first. */
    static List<String> near(String word, Collection<String> known) {
        if (word.length() > LONGEST) {
            return List.of();
        }
        int most = word.length() <= 4 ? 1 : 2;
        return known.stream()
                .filter(other -> steps(word, other) <= most || isBeginning(word, other))
                .sorted(Comparator.<String>comparingInt(other -> steps(word, other))
                        .thenComparing(other -> other))
                .limit(MOST_NAMED)
                .toList();
    }

    private static boolean isBeginning(String word, String other) {
        return word.length() >= 3 && other.length() >= 3 && (other.startsWith(word) || word.startsWith(other));
    }

    /** How many letters must be put in, left out, changed or swapped with a neighbour to make one word of another. */
    static int steps(String from, String to) {
        int[][] steps = new int[from.length() + 1][to.length() + 1];
        for (int i = 0; i <= from.length(); i++) {
            for (int j = 0; j <= to.length(); j++) {
                steps[i][j] = i == 0 || j == 0 ? i + j : least(steps, i, j, from, to);
            }
        }
        return steps[from.length()][to.length()];
    }

    private static int least(int[][] steps, int i, int j, String from, String to) {
        boolean alike = from.charAt(i - 1) == to.charAt(j - 1);
        int least = Math.min(steps[i - 1][j - 1] + (alike ? 0 : 1), Math.min(steps[i - 1][j], steps[i][j - 1]) + 1);
        boolean swapped =
                i > 1 && j > 1 && from.charAt(i - 1) == to.charAt(j - 2) && from.charAt(i - 2) == to.charAt(j - 1);
        return swapped ? Math.min(least, steps[i - 2][j - 2] + 1) : least;
    }
}
