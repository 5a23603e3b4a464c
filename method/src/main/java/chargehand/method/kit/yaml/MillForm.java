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

    static Optional<Mill> read(KitForm form, String name) {
        var travels = form.group("travels", MillForm::travels);
        var speeds = form.speeds();
        var power = form.power();
        var feeds = form.feeds("feeds");
        var dials = form.group("dials", MillForm::dials);
        var vices = MachineForm.vices(form);
        var vees = form.findSpan("vees");
        var clamps = form.findLength("clamps");
        var head = form.findGroup("dividing-head", MillForm::dividingHead);
        return form.build(() -> new Mill(
                name,
                form.unit(),
                travels.orElseThrow(),
                speeds,
                power,
                feeds,
                dials.orElseThrow(),
                vices,
                vees,
                clamps,
                head));
    }

    private static Optional<Mill.Travels> travels(KitForm form) {
        var along = form.length("along");
        var across = form.length("across");
        var up = form.length("up");
        return form.build(() -> new Mill.Travels(along, across, up));
    }

    private static Optional<Mill.TableDials> dials(KitForm form) {
        var along = form.group("along", LatheForm::dial);
        var across = form.group("across", LatheForm::dial);
        var up = form.group("up", LatheForm::dial);
        return form.build(() -> new Mill.TableDials(along.orElseThrow(), across.orElseThrow(), up.orElseThrow()));
    }

    private static Optional<DividingHead> dividingHead(KitForm form) {
        String name = form.name();
        int worm = form.count("worm", 1, MOST_WORM);
        var plates = form.rows("plates", MillForm::plate);
        var teeth = Notations.count(1, MOST_TEETH);
        var gears = form.keys().values("gears", text -> teeth.read(text, form.unit()));
        var chuck = form.group("chuck", HolderForm::chuck);
        var bore = form.length("spindle-bore");
        var height = form.length("centre-height");
        boolean tail = form.yes("tail-centre");
        return form.build(() -> new DividingHead(name, worm, plates, gears, chuck.orElseThrow(), bore, height, tail));
    }

    private static Optional<DividingHead.Plate> plate(KitForm form) {
        String name = form.name();
        var holes = Notations.count(1, MOST_HOLES);
        var circles = form.list("circles", text -> holes.read(text, form.unit()));
        return form.build(() -> new DividingHead.Plate(name, circles));
    }
}
