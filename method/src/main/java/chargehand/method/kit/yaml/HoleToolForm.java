package chargehand.method.kit.yaml;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Written;
import chargehand.method.kit.HoleTools;
import chargehand.method.kit.HoleTools.CentreDrill;
import chargehand.method.kit.HoleTools.Countersink;
import chargehand.method.kit.HoleTools.Reamer;
import chargehand.method.kit.HoleTools.Tap;
import chargehand.trade.drill.Drill;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** Reads what makes holes. */
final class HoleToolForm {
    private static final Pattern WITH_CLASS = Pattern.compile("(.*\\S)\\s+([A-Z]{1,2}\\d{1,2})");
    private static final String USUAL_CLASS = "H7";

    private HoleToolForm() {}

    /** The hole tools of a tooling file; unsound ones are left out and told as faults. */
    static HoleTools read(KitForm form) {
        List<Drill> drills = form.keys().values("drills", text -> DrillText.read(text, form.unit())).stream()
                .flatMap(List::stream)
                .distinct()
                .toList();
        return new HoleTools(
                drills,
                form.rows("centre-drills", HoleToolForm::centreDrill),
                form.keys().values("reamers", text -> reamer(text, form.unit())),
                taps(form),
                form.rows("countersinks", HoleToolForm::countersink));
    }

    private static List<Tap> taps(KitForm form) {
        return Stream.concat(
                        form.keys().values("taps", text -> new Tap(KitText.thread(text), true)).stream(),
                        form.keys().values("taper-taps", text -> new Tap(KitText.thread(text), false)).stream())
                .toList();
    }

    private static Optional<CentreDrill> centreDrill(KitForm row) {
        String name = row.name();
        Length body = row.length("body");
        Length pilot = row.length("pilot");
        return row.build(() -> new CentreDrill(name, body, pilot));
    }

    private static Optional<Countersink> countersink(KitForm row) {
        var angle = row.angle("angle");
        Length largest = row.length("largest");
        return row.build(() -> new Countersink(angle, largest));
    }

    /** A reamer by its size, with the class of hole it makes where that is not the usual one: {@code 16 mm H8}. */
    static Reamer reamer(String text, LengthUnit bareUnit) {
        Matcher matcher = WITH_CLASS.matcher(text);
        boolean said = matcher.matches();
        Written size = KitText.positive(said ? matcher.group(1) : text, bareUnit);
        String makes = KitText.holeClass(said ? matcher.group(2) : USUAL_CLASS, size.length());
        return new Reamer(size.withUnit(), size.length(), makes);
    }
}
