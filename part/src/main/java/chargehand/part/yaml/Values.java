package chargehand.part.yaml;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Notations;
import chargehand.measure.Unreadable;
import chargehand.measure.Written;
import chargehand.part.Depth;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Made;
import chargehand.part.Size;
import chargehand.part.yaml.tree.Form;
import chargehand.part.yaml.tree.ReadingFault;
import chargehand.trade.thread.ScrewThread;
import java.util.Locale;
import java.util.Optional;

/** Reads the single values of a part file. */
final class Values {
    /** A size to go on with where one is refused. */
    static final Size STAND_IN = Size.general(new Written("1 mm", Length.mm(1), LengthUnit.MILLIMETRE));

    private static final ScrewThread THREAD = ScrewThread.parse("M10");
    private static final int MOST_COUNT_FIGURES = 4;

    private Values() {}

    static Size size(Form form, String key) {
        return form.value(key, text -> SizeText.read(text, form.bareUnit()), STAND_IN);
    }

    /** The size of a drill: as any size, or by its number or letter. */
    static Size drill(Form form, String key) {
        return form.value(key, text -> SizeText.readDrill(text, form.bareUnit()), STAND_IN);
    }

    static Optional<Size> findSize(Form form, String key) {
        return form.find(key, text -> SizeText.read(text, form.bareUnit()));
    }

    static Written length(Form form, String key) {
        return form.value(key, text -> Lengths.read(text, form.bareUnit()), STAND_IN.nominal());
    }

    static Optional<Length> findLength(Form form, String key) {
        return form.find(key, text -> Lengths.read(text, form.bareUnit()).length());
    }

    static ScrewThread thread(Form form, String key) {
        return form.value(key, ScrewThread::parse, THREAD);
    }

    static Edge edge(Form form, String key) {
        return form.find(key, text -> EdgeText.read(text, form.bareUnit())).orElse(new Edge.Plain());
    }

    /** An angle round the axis; upward where none is written. */
    static Angle around(Form form) {
        return form.find("around", text -> Notations.ANGLE.read(text, form.bareUnit()))
                .orElse(Angle.degrees(0));
    }

    static int count(String text) {
        if (text.isEmpty()
                || text.length() > MOST_COUNT_FIGURES
                || !text.chars().allMatch(c -> c >= '0' && c <= '9')) {
            throw new Unreadable("A count is a whole number, such as 8.");
        }
        return Integer.parseInt(text);
    }

    static End end(String text) {
        return switch (text.toUpperCase(Locale.ROOT)) {
            case "A" -> End.A;
            case "B" -> End.B;
            default -> throw new Unreadable("The ends of a part are A and B.");
        };
    }

    /** A depth where going through is what is meant when nothing is said. */
    static Depth depthOrThrough(Form form) {
        boolean through = form.find("through", Values::yes).orElse(true);
        Optional<Size> depth = findSize(form, "depth");
        if (depth.isPresent() && form.has("through") && through) {
            form.refuse("depth", ReadingFault.KEYS_CLASH, "A hole goes through or to a depth, not both.");
        }
        if (!form.has("depth") && !through) {
            form.refuse("through", ReadingFault.KEY_MISSING, "A hole that does not go through has a depth.");
        }
        return depth.<Depth>map(Depth.Blind::new).orElseGet(Depth.Through::new);
    }

    /** Whether a feature is there already. */
    static Made made(Form form) {
        return form.find("made", Values::already).orElse(Made.HERE);
    }

    private static Made already(String text) {
        if (!text.equalsIgnoreCase("already")) {
            throw new Unreadable(
                    "Write 'made: already' for what is there as the work comes in, or leave the line out.");
        }
        return Made.ALREADY;
    }

    private static boolean yes(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "true", "yes" -> true;
            case "false", "no" -> false;
            default -> throw new Unreadable("Write true or false here.");
        };
    }
}
