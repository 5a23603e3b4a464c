package chargehand.method.kit.yaml;

import chargehand.method.kit.Chuck;
import chargehand.method.kit.ColletSet;
import chargehand.method.kit.Holders;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Reads what a machine holds work in. */
final class HolderForm {
    private static final List<String> JAWS = List.of("3", "4", "6");

    private HolderForm() {}

    static Optional<Holders> read(Sheet sheet) {
        Set<String> names = new HashSet<>();
        var chucks = sheet.rows("chucks", row -> chuck(row).filter(chuck -> isNew(row, chuck.name(), names)));
        var collets = sheet.rows("collets", row -> collets(row).filter(set -> isNew(row, set.name(), names)));
        var faceplate = sheet.findLength("faceplate");
        var tailstock = sheet.group("tailstock", HolderForm::tailstock);
        var dogs = sheet.findLength("dogs");
        var fixed = sheet.findSpan("fixed-steady");
        var travelling = sheet.findSpan("travelling-steady");
        return tailstock.map(each -> new Holders(chucks, collets, faceplate, each, dogs, fixed, travelling));
    }

    private static boolean isNew(Sheet row, String name, Set<String> names) {
        boolean added = names.add(name.toLowerCase(Locale.ROOT));
        if (!added) {
            row.form()
                    .refuse(
                            "name",
                            KitFault.NAME_TWICE,
                            "'" + name + "' stands above already: give this one a name of its own.");
        }
        return added;
    }

    static Optional<Chuck> chuck(Sheet sheet) {
        String name = sheet.name();
        int jaws = sheet.form().value("jaws", text -> Integer.parseInt(KitText.oneOf(text, JAWS, word -> word)), 3);
        var closing = sheet.yes("independent") ? Chuck.Closing.INDEPENDENT : Chuck.Closing.SELF_CENTRING;
        var outside = sheet.span("outside");
        var inside = sheet.findSpan("inside");
        var jawLength = sheet.length("jaw-length");
        var runOut = sheet.lengthOrNone("run-out");
        return sheet.build(() -> new Chuck(name, jaws, closing, outside, inside, jawLength, runOut));
    }

    private static Optional<ColletSet> collets(Sheet sheet) {
        String name = sheet.name();
        var sizes = sheet.span("sizes");
        var step = sheet.length("step");
        var closes = sheet.lengthOrNone("closes");
        var grip = sheet.length("grip-length");
        var runOut = sheet.lengthOrNone("run-out");
        return sheet.build(() -> new ColletSet(name, sizes, step, closes, grip, runOut));
    }

    private static Optional<Holders.Tailstock> tailstock(Sheet sheet) {
        var travel = sheet.length("travel");
        var setOver = sheet.lengthOrNone("set-over");
        var centre = sheet.word("centre", Holders.Centre.class);
        return sheet.build(() -> new Holders.Tailstock(travel, setOver, centre));
    }
}
