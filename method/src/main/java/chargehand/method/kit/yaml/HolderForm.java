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

    static Optional<Holders> read(KitForm form) {
        Set<String> names = new HashSet<>();
        var chucks = form.rows("chucks", row -> chuck(row).filter(chuck -> isNew(row, chuck.name(), names)));
        var collets = form.rows("collets", row -> collets(row).filter(set -> isNew(row, set.name(), names)));
        var faceplate = form.findLength("faceplate");
        var tailstock = form.group("tailstock", HolderForm::tailstock);
        var dogs = form.findLength("dogs");
        var fixed = form.findSpan("fixed-steady");
        var travelling = form.findSpan("travelling-steady");
        return tailstock.map(each -> new Holders(chucks, collets, faceplate, each, dogs, fixed, travelling));
    }

    private static boolean isNew(KitForm row, String name, Set<String> names) {
        boolean added = names.add(name.toLowerCase(Locale.ROOT));
        if (!added) {
            row.keys()
                    .refuse(
                            "name",
                            KitFault.NAME_TWICE,
                            "'" + name + "' stands above already: give this one a name of its own.");
        }
        return added;
    }

    static Optional<Chuck> chuck(KitForm form) {
        String name = form.name();
        int jaws = form.keys().value("jaws", text -> Integer.parseInt(KitText.oneOf(text, JAWS, word -> word)), 3);
        var closing = form.yes("independent") ? Chuck.Closing.INDEPENDENT : Chuck.Closing.SELF_CENTRING;
        var outside = form.span("outside");
        var inside = form.findSpan("inside");
        var jawLength = form.length("jaw-length");
        var runOut = form.lengthOrNone("run-out");
        var soft = form.findGroup("soft-jaws", HolderForm::softJaws);
        return form.build(() -> new Chuck(name, jaws, closing, outside, inside, jawLength, runOut, soft));
    }

    private static Optional<Chuck.SoftJaws> softJaws(KitForm form) {
        var outside = form.span("outside");
        var jawLength = form.length("jaw-length");
        var runOut = form.lengthOrNone("run-out");
        return form.build(() -> new Chuck.SoftJaws(outside, jawLength, runOut));
    }

    private static Optional<ColletSet> collets(KitForm form) {
        String name = form.name();
        var sizes = form.span("sizes");
        var step = form.length("step");
        var closes = form.lengthOrNone("closes");
        var grip = form.length("grip-length");
        var runOut = form.lengthOrNone("run-out");
        return form.build(() -> new ColletSet(name, sizes, step, closes, grip, runOut));
    }

    private static Optional<Holders.Tailstock> tailstock(KitForm form) {
        var travel = form.length("travel");
        var setOver = form.lengthOrNone("set-over");
        var centre = form.word("centre", Holders.Centre.class);
        return form.build(() -> new Holders.Tailstock(travel, setOver, centre));
    }
}
