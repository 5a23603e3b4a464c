package chargehand.trade.thread;

import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.jspecify.annotations.Nullable;

/**
 * One dimension of a thread form as its standard prints it, such as {@code 17/24 H} or {@code 1/2 p + a}. The text that is
 * shown in the working is the one that is computed with.
 *
 * @param text the rule as printed
 * @param ofTriangle how many heights H of the sharp triangle
 * @param ofPitch how many pitches p
 * @param ofClearance how many crest clearances a
 * @param ofDepth how many depths h
 */
record Proportion(String text, double ofTriangle, double ofPitch, double ofClearance, double ofDepth) {
    private static final Pattern TERM = Pattern.compile("\\s*([+-]?)\\s*(?:([0-9.]+)(?:/([0-9]+))?)?\\s*([Hpah])");

    /** Reads terms joined by plus or minus, each one of the letters H, p, a, h with or without a number before it. */
    static Proportion parse(String text) {
        double[] of = new double["Hpah".length()];
        Matcher term = TERM.matcher(text);
        int end = 0;
        while (term.find() && term.start() == end) {
            of["Hpah".indexOf(term.group(4))] += factor(term);
            end = term.end();
        }
        if (end == 0 || end != text.length()) {
            throw new IllegalArgumentException("not a proportion of H, p, a and h: " + text);
        }
        return new Proportion(text, of[0], of[1], of[2], of[3]);
    }

    private static double factor(Matcher term) {
        double numerator = term.group(2) == null ? 1 : Double.parseDouble(term.group(2));
        double size = term.group(3) == null ? numerator : numerator / Double.parseDouble(term.group(3));
        return "-".equals(term.group(1)) ? -size : size;
    }

    /** The rule with figures in place of its letters: {@code 17/24 × 1.5155}. */
    String with(Letters letters) {
        return TERM.matcher(text)
                .replaceAll(term -> Matcher.quoteReplacement(term.group(1).isEmpty() ? "" : " " + term.group(1) + " ")
                        + factorText(term.group(2), term.group(3))
                        + letters.of(term.group(4)));
    }

    private static String factorText(@Nullable String numerator, @Nullable String denominator) {
        if (numerator == null) {
            return "";
        }
        return numerator + (denominator == null ? "" : "/" + denominator) + " × ";
    }

    /** The figures of one thread for its letters, as written in the unit of the working. */
    record Letters(String triangle, String pitch, String clearance, String depth) {
        private String of(String letter) {
            return switch (letter) {
                case "H" -> triangle;
                case "p" -> pitch;
                case "a" -> clearance;
                default -> depth;
            };
        }
    }

    /** The dimension (mm) on a thread with this basis. */
    double mm(Basis basis) {
        return ofTriangle * basis.triangleMm()
                + ofPitch * basis.pitchMm()
                + ofClearance * basis.clearanceMm()
                + ofDepth * basis.depthMm();
    }

    /** What the letters stand for on one thread, all in millimetres. */
    record Basis(double triangleMm, double pitchMm, double clearanceMm, double depthMm) {
        Basis withDepth(double depth) {
            return new Basis(triangleMm, pitchMm, clearanceMm, depth);
        }
    }
}
