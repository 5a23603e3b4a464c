package chargehand.method.kit.yaml;

import chargehand.measure.Notations;
import chargehand.method.kit.DividingHead;
import chargehand.method.kit.Mill;
import java.util.Optional;

/** Reads a milling machine. */
final class MillForm {
    private static final int MOST_WORM = 360;
    private static final int MOST_HOLES = 500;
    private static final int MOST_TEETH = 150;

    private MillForm() {}

    static Optional<Mill> read(Sheet sheet, String name) {
        var travels = sheet.group("travels", MillForm::travels);
        var speeds = sheet.speeds();
        var power = sheet.power();
        var feeds = sheet.feeds("feeds");
        var dials = sheet.group("dials", MillForm::dials);
        var vices = MachineForm.vices(sheet);
        var head = sheet.findGroup("dividing-head", MillForm::dividingHead);
        return sheet.build(() -> new Mill(
                name, sheet.unit(), travels.orElseThrow(), speeds, power, feeds, dials.orElseThrow(), vices, head));
    }

    private static Optional<Mill.Travels> travels(Sheet sheet) {
        var along = sheet.length("along");
        var across = sheet.length("across");
        var up = sheet.length("up");
        return sheet.build(() -> new Mill.Travels(along, across, up));
    }

    private static Optional<Mill.TableDials> dials(Sheet sheet) {
        var along = sheet.group("along", LatheForm::dial);
        var across = sheet.group("across", LatheForm::dial);
        var up = sheet.group("up", LatheForm::dial);
        return sheet.build(() -> new Mill.TableDials(along.orElseThrow(), across.orElseThrow(), up.orElseThrow()));
    }

    private static Optional<DividingHead> dividingHead(Sheet sheet) {
        String name = sheet.name();
        int worm = sheet.count("worm", 1, MOST_WORM);
        var plates = sheet.rows("plates", MillForm::plate);
        var teeth = Notations.count(1, MOST_TEETH);
        var gears = sheet.form().values("gears", text -> teeth.read(text, sheet.unit()));
        var chuck = sheet.group("chuck", HolderForm::chuck);
        var bore = sheet.length("spindle-bore");
        var height = sheet.length("centre-height");
        boolean tail = sheet.yes("tail-centre");
        return sheet.build(() -> new DividingHead(name, worm, plates, gears, chuck.orElseThrow(), bore, height, tail));
    }

    private static Optional<DividingHead.Plate> plate(Sheet sheet) {
        String name = sheet.name();
        var holes = Notations.count(1, MOST_HOLES);
        var circles = sheet.list("circles", text -> holes.read(text, sheet.unit()));
        return sheet.build(() -> new DividingHead.Plate(name, circles));
    }
}
