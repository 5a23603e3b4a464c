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

    static Optional<Lathe> read(Sheet sheet, String name) {
        var swing = sheet.group("swing", LatheForm::swing);
        var centres = sheet.length("between-centres");
        var bore = sheet.length("spindle-bore");
        var speeds = sheet.speeds();
        var power = sheet.power();
        var feeds = sheet.group("feeds", LatheForm::driven);
        var screwCutting = sheet.group("screw-cutting", LatheForm::screwCutting);
        var dials = sheet.group("dials", LatheForm::dials);
        var travel = sheet.length("top-slide-travel");
        var holders = HolderForm.read(sheet);
        return sheet.build(() -> new Lathe(
                name,
                sheet.unit(),
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

    private static Optional<Swing> swing(Sheet sheet) {
        var overBed = sheet.length("over-bed");
        var overSlide = sheet.length("over-slide");
        return sheet.build(() -> new Swing(overBed, overSlide));
    }

    private static Optional<Lathe.Driven> driven(Sheet sheet) {
        var along = sheet.feeds("along");
        var across = sheet.feeds("across");
        return sheet.build(() -> new Lathe.Driven(along, across));
    }

    private static Optional<ScrewCutting> screwCutting(Sheet sheet) {
        var leadscrew = sheet.pitch("leadscrew");
        var teeth = Notations.count(ScrewCutting.FEWEST_TEETH, ScrewCutting.MOST_TEETH);
        var wheels = sheet.list("wheels", text -> teeth.read(text, sheet.unit()));
        if (wheels.size() > WheelSet.MOST_WHEELS) {
            sheet.form()
                    .refuse(
                            "wheels",
                            KitFault.CANNOT_BE,
                            wheels.size() + " wheels are more than any lathe has: list at most " + WheelSet.MOST_WHEELS
                                    + ".");
        }
        var gearbox = sheet.rows("gearbox", LatheForm::ratio);
        var quadrant = sheet.group("quadrant", LatheForm::quadrant);
        var dial = sheet.findGroup("chasing-dial", LatheForm::chasingDial);
        boolean reverses = sheet.yes("reverses");
        return sheet.build(() -> new ScrewCutting(leadscrew, wheels, gearbox, quadrant.orElseThrow(), dial, reverses));
    }

    private static Optional<ScrewCutting.Ratio> ratio(Sheet sheet) {
        String lever = sheet.form().text("lever");
        var turns = sheet.ratio("turns");
        return sheet.build(() -> new ScrewCutting.Ratio(lever, turns));
    }

    private static Optional<ScrewCutting.Quadrant> quadrant(Sheet sheet) {
        int pairs = sheet.count("most-pairs", 1, MOST_PAIRS);
        int least = sheet.count("least-teeth-together", 1, MOST_TOGETHER);
        int most = sheet.count("most-teeth-together", 1, MOST_TOGETHER);
        return sheet.build(() -> new ScrewCutting.Quadrant(pairs, least, most));
    }

    private static Optional<ScrewCutting.ChasingDial> chasingDial(Sheet sheet) {
        int teeth = sheet.count("teeth", 1, MOST_MARKS);
        int marks = sheet.count("marks", 1, MOST_MARKS);
        return sheet.build(() -> new ScrewCutting.ChasingDial(teeth, marks));
    }

    /** The dials before the top slide's travel is known. */
    private record Dials(Dial cross, Slides.CrossReads reads, Optional<Dial> topSlide, Optional<Dial> saddle) {
        Slides slides(Length topSlideTravel) {
            return new Slides(cross, reads, topSlide, saddle, topSlideTravel);
        }
    }

    private record Cross(Dial dial, Slides.CrossReads reads) {}

    private static Optional<Dials> dials(Sheet sheet) {
        var cross = sheet.group("cross", LatheForm::cross);
        var topSlide = sheet.findGroup("top-slide", LatheForm::dial);
        var saddle = sheet.findGroup("saddle", LatheForm::dial);
        return sheet.build(
                () -> new Dials(cross.orElseThrow().dial(), cross.orElseThrow().reads(), topSlide, saddle));
    }

    private static Optional<Cross> cross(Sheet sheet) {
        var division = sheet.length("division");
        var turn = sheet.length("turn");
        var reads = sheet.word("reads", Slides.CrossReads.class);
        return sheet.build(() -> new Cross(new Dial(division, turn), reads));
    }

    static Optional<Dial> dial(Sheet sheet) {
        var division = sheet.length("division");
        var turn = sheet.length("turn");
        return sheet.build(() -> new Dial(division, turn));
    }
}
