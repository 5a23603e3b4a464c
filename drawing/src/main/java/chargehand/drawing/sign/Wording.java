package chargehand.drawing.sign;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.Mark;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * What stands at a dimension or a leader, in one line: words with the diameter and square signs among them, fractions with
 * a bar, limits one above the other.
 *
 * @param pieces from left to right, at least one
 */
public record Wording(List<Piece> pieces) {
    /** The diameter sign as it is typed; the drawn one is a path. */
    public static final String DIAMETER = "Ø";

    /** The square sign as it is typed. */
    public static final String SQUARE = "□";

    private static final Pattern FRACTION = Pattern.compile("(?<![\\d./])(\\d+)/(\\d+)(?![\\d./-])");
    private static final Pattern WHOLE = Pattern.compile("\\d $");
    private static final Pattern SIGN = Pattern.compile("[" + DIAMETER + SQUARE + "]");

    public Wording {
        pieces = List.copyOf(pieces);
        if (pieces.isEmpty()) {
            throw new IllegalArgumentException("wording says something");
        }
    }

    /** Words whose signs are drawn; fractions stay in line, as in {@code 1/2 BSW}. */
    public static Wording of(String words) {
        List<Piece> pieces = new ArrayList<>();
        Matcher sign = SIGN.matcher(words);
        int done = 0;
        while (sign.find()) {
            run(words.substring(done, sign.start()), pieces);
            pieces.add(sign.group().equals(DIAMETER) ? new Piece.Diameter() : new Piece.Square());
            done = sign.end();
        }
        run(words.substring(done), pieces);
        return new Wording(pieces);
    }

    /** A size: as {@link #of}, and fractions get a bar. */
    public static Wording size(String words) {
        List<Piece> pieces = new ArrayList<>();
        Matcher fraction = FRACTION.matcher(words);
        int done = 0;
        while (fraction.find()) {
            if (fraction.start() > done) {
                String before = words.substring(done, fraction.start());
                pieces.addAll(of(WHOLE.matcher(before).find() ? before.stripTrailing() : before).pieces);
            }
            pieces.add(new Piece.Fraction(fraction.group(1), fraction.group(2)));
            done = fraction.end();
        }
        if (done < words.length()) {
            pieces.addAll(of(words.substring(done)).pieces);
        }
        return new Wording(pieces);
    }

    /** The taper sign, a slim triangle that closes to the right or the left. */
    public static Wording taper(boolean closesRight) {
        return new Wording(List.of(new Piece.Taper(closesRight)));
    }

    private static void run(String words, List<Piece> pieces) {
        if (!words.isEmpty()) {
            pieces.add(new Piece.Run(words));
        }
    }

    /** This wording with another one after it. */
    public Wording then(Wording more) {
        List<Piece> all = new ArrayList<>(pieces);
        all.addAll(more.pieces);
        return new Wording(all);
    }

    /** This wording with two limits or deviations after it, the upper one above. */
    public Wording limits(String upper, String lower) {
        return then(new Wording(List.of(new Piece.Limits(upper, lower))));
    }

    /** How wide it is at a lettering height (mm). */
    public double width(double height) {
        return pieces.stream().mapToDouble(piece -> piece.width(height)).sum();
    }

    /** How far it rises above the base line (mm). */
    public double ascent(double height) {
        return pieces.stream().mapToDouble(piece -> piece.ascent(height)).max().orElse(height);
    }

    /** How far it sinks below the base line (mm). */
    public double descent(double height) {
        return pieces.stream().mapToDouble(piece -> piece.descent(height)).max().orElse(0);
    }

    /** Its marks, beginning at a frame's origin. */
    public List<Mark> marks(Local frame, double height, Ink ink) {
        List<Mark> marks = new ArrayList<>();
        double along = 0;
        for (Piece piece : pieces) {
            marks.addAll(piece.marks(frame.moved(along, 0), height, ink));
            along += piece.width(height);
        }
        return marks;
    }

    /** The wording as one would type it. */
    @Override
    public String toString() {
        StringBuilder typed = new StringBuilder();
        for (Piece piece : pieces) {
            boolean mixed = piece instanceof Piece.Fraction
                    && !typed.isEmpty()
                    && Character.isDigit(typed.charAt(typed.length() - 1));
            typed.append(mixed ? " " : "").append(piece);
        }
        return typed.toString();
    }

    /** Words in a frame; spaces before them become room, since not every writer keeps them. */
    static Mark words(Local frame, double along, double up, Lettering lettering, String text, Ink ink) {
        String bare = text.stripLeading();
        double room = lettering.width(text.substring(0, text.length() - bare.length()));
        return new Mark.Words(
                ink, lettering, frame.at(along + room, up), Mark.Align.LEFT, frame.turned(), bare.stripTrailing());
    }
}
