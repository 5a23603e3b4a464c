package chargehand.method.kit.yaml;

import chargehand.measure.Length;
import chargehand.measure.Notations;
import chargehand.method.kit.Dial;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.ScrewCutting;
import chargehand.method.kit.Slides;
import chargehand.trade.wheels.WheelSet;
import java.util.Optional;

/** Reads a lathe. */
final class LatheForm {
    private static final int MOST_PAIRS = 3;
    private static final int MOST_TOGETHER = 1000;
    private static final int MOST_MARKS = 200;

    private LatheForm() {}

    static Optional<Lathe> read(KitForm form, String name) {
        var swing = form.group("swing", LatheForm::swing);
        var centres = form.length("between-centres");
        var bore = form.length("spindle-bore");
        var speeds = form.speeds();
        var power = form.power();
        var feeds = form.group("feeds", LatheForm::driven);
        var screwCutting = form.group("screw-cutting", LatheForm::screwCutting);
        var dials = form.group("dials", LatheForm::dials);
        var travel = form.length("top-slide-travel");
        var holders = HolderForm.read(form);
        return form.build(() -> new Lathe(
                name,
                form.unit(),
                new Lathe.Room(
                        swing.orElseThrow().overBed(), swing.orElseThrow().overSlide(), centres, bore),
                speeds,
                power,
                feeds.orElseThrow(),
                screwCutting.orElseThrow(),
                dials.orElseThrow().slides(travel),
                holders.orElseThrow()));
    }

    private record Swing(Length overBed, Length overSlide) {
        Swing {
            if (overSlide.isMoreThan(overBed)) {
                throw new IllegalArgumentException("the swing over the slide is more than over the bed");
            }
        }
    }

    private static Optional<Swing> swing(KitForm form) {
        var overBed = form.length("over-bed");
        var overSlide = form.length("over-slide");
        return form.build(() -> new Swing(overBed, overSlide));
    }

    private static Optional<Lathe.Driven> driven(KitForm form) {
        var along = form.feeds("along");
        var across = form.feeds("across");
        return form.build(() -> new Lathe.Driven(along, across));
    }

    private static Optional<ScrewCutting> screwCutting(KitForm form) {
        var leadscrew = form.pitch("leadscrew");
        var teeth = Notations.count(ScrewCutting.FEWEST_TEETH, ScrewCutting.MOST_TEETH);
        var wheels = form.list("wheels", text -> teeth.read(text, form.unit()));
        if (wheels.size() > WheelSet.MOST_WHEELS) {
            form.keys()
                    .refuse(
                            "wheels",
                            KitFault.CANNOT_BE,
                            wheels.size() + " wheels are more than any lathe has: list at most " + WheelSet.MOST_WHEELS
                                    + ".");
        }
        var gearbox = form.rows("gearbox", LatheForm::ratio);
        var quadrant = form.group("quadrant", LatheForm::quadrant);
        var dial = form.findGroup("chasing-dial", LatheForm::chasingDial);
        boolean reverses = form.yes("reverses");
        return form.build(() -> new ScrewCutting(leadscrew, wheels, gearbox, quadrant.orElseThrow(), dial, reverses));
    }

    private static Optional<ScrewCutting.Ratio> ratio(KitForm form) {
        String lever = form.keys().text("lever");
        var turns = form.ratio("turns");
        return form.build(() -> new ScrewCutting.Ratio(lever, turns));
    }

    private static Optional<ScrewCutting.Quadrant> quadrant(KitForm form) {
        int pairs = form.count("most-pairs", 1, MOST_PAIRS);
        int least = form.count("least-teeth-together", 1, MOST_TOGETHER);
        int most = form.count("most-teeth-together", 1, MOST_TOGETHER);
        return form.build(() -> new ScrewCutting.Quadrant(pairs, least, most));
    }

    private static Optional<ScrewCutting.ChasingDial> chasingDial(KitForm form) {
        int teeth = form.count("teeth", 1, MOST_MARKS);
        int marks = form.count("marks", 1, MOST_MARKS);
        return form.build(() -> new ScrewCutting.ChasingDial(teeth, marks));
    }

    /** The dials before the top slide's travel is known. */
    private record Dials(Dial cross, Slides.CrossReads reads, Optional<Dial> topSlide, Optional<Dial> saddle) {
        Slides slides(Length topSlideTravel) {
            return new Slides(cross, reads, topSlide, saddle, topSlideTravel);
        }
    }

    private record Cross(Dial dial, Slides.CrossReads reads) {}

    private static Optional<Dials> dials(KitForm form) {
        var cross = form.group("cross", LatheForm::cross);
        var topSlide = form.findGroup("top-slide", LatheForm::dial);
        var saddle = form.findGroup("saddle", LatheForm::dial);
        return form.build(
                () -> new Dials(cross.orElseThrow().dial(), cross.orElseThrow().reads(), topSlide, saddle));
    }

    private static Optional<Cross> cross(KitForm form) {
        var division = form.length("division");
        var turn = form.length("turn");
        var reads = form.word("reads", Slides.CrossReads.class);
        return form.build(() -> new Cross(new Dial(division, turn), reads));
    }

    static Optional<Dial> dial(KitForm form) {
        var division = form.length("division");
        var turn = form.length("turn");
        return form.build(() -> new Dial(division, turn));
    }
}
