package chargehand.trade.fit;

import chargehand.measure.Unreadable;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A tolerance class as written after a size on a drawing, such as {@code H7} or {@code g6}.
 *
 * @param hole whether it is for a hole (capital letter) or a shaft (small letter)
 * @param letter the fundamental deviation, always in small letters: {@code h}, {@code js}, {@code za}
 * @param grade the standard tolerance grade, 0 to 18, or {@value #GRADE_01} for IT01
 */
public record ToleranceClass(boolean hole, String letter, int grade) {
    /** How the finest grade, IT01, is counted: one below IT0. */
    public static final int GRADE_01 = -1;

    private static final int COARSEST = 18;
    private static final Set<String> LETTERS = Set.of(
            "a", "b", "c", "cd", "d", "e", "ef", "f", "fg", "g", "h", "j", "js", "k", "m", "n", "p", "r", "s", "t", "u",
            "v", "x", "y", "z", "za", "zb", "zc");
    private static final Pattern WRITTEN = Pattern.compile("([A-Za-z]{1,2})\\s*(01|\\d{1,2})");

    public ToleranceClass {
        if (!LETTERS.contains(letter) || grade < GRADE_01 || grade > COARSEST) {
            throw new IllegalArgumentException("ISO 286 has no class " + letter + grade);
        }
    }

    /**
     * Reads a class such as {@code H7}, {@code js6} or {@code h 01}.
     *
     * @throws Unreadable when it is not a letter of the standard followed by a grade from 01 to 18
     */
    public static ToleranceClass parse(String written) {
        Matcher matcher = WRITTEN.matcher(written.trim());
        if (!matcher.matches()) {
            throw unreadable(written, "a letter and a grade are wanted, such as H7 for a hole or g6 for a shaft");
        }
        String letters = matcher.group(1);
        String letter = letters.toLowerCase(Locale.ROOT);
        if (!LETTERS.contains(letter)) {
            throw unreadable(
                    written, "ISO 286 does not use the letter " + letters + ", but A to ZC without I, L, O, Q, W");
        }
        int grade = matcher.group(2).equals("01") ? GRADE_01 : Integer.parseInt(matcher.group(2));
        if (grade > COARSEST) {
            throw unreadable(written, "grades run from 01 to 18");
        }
        return new ToleranceClass(Character.isUpperCase(letters.charAt(0)), letter, grade);
    }

    private static Unreadable unreadable(String written, String why) {
        return new Unreadable("'" + written.trim() + "' is not a tolerance class: " + why + ".");
    }

    /** The grade as it is written, such as {@code IT7} or {@code IT01}. */
    public String gradeName() {
        return gradeName(grade);
    }

    static String gradeName(int grade) {
        return "IT" + (grade == GRADE_01 ? "01" : grade);
    }

    /** The class as it is written on a drawing. */
    @Override
    public String toString() {
        return (hole ? letter.toUpperCase(Locale.ROOT) : letter)
                + gradeName(grade).substring(2);
    }
}
