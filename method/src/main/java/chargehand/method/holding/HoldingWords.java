package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.kit.Tooling.Mandrel;
import chargehand.method.plan.Holding;
import chargehand.part.Body;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** How to set a holding up, said to the person who does it. */
final class HoldingWords {
    private static final String PACKING = "Copper or card between the jaws and the finished surface.";

    private HoldingWords() {}

    /** The steps for a chuck or collet with the work standing out so far. */
    static List<String> instructions(Holding holding, GripPlace place, Overhang overhang, LengthUnit unit) {
        var steps = new ArrayList<String>();
        String out = LengthText.in(ByRule.up(overhang.length(), unit), unit);
        String end = "end " + place.headstock().other() + " outwards";
        switch (holding) {
            case Holding.InChuck chuck -> {
                steps.addAll(bearing(chuck, unit));
                steps.add("Hold in the " + chuck.chuck() + ", " + end + ", " + out + " out of the jaws.");
                if (isShort(chuck)) {
                    steps.add(
                            "Tap it back square against the steps of the jaws, or a true ring behind it, as they close.");
                }
                if (chuck.jaws() == 4) {
                    steps.add("Dial true to " + LengthText.in(chuck.runOut(), unit) + " before cutting.");
                }
                addSupport(chuck.support(), steps);
            }
            case Holding.InCollet collet -> {
                steps.add("Hold in a " + LengthText.in(place.diameter(), unit) + " collet of the " + collet.collet()
                        + ", " + end + ", " + out + " out.");
                addSupport(collet.support(), steps);
            }
            case Holding.InDividingHead head -> {
                steps.add("Hold in the chuck of the " + head.head() + ", " + end + ", " + out + " out of the jaws.");
                packing(place.gripped()).ifPresent(steps::add);
                addSupport(head.support(), steps);
            }
            case Holding.BetweenCentres centres -> {}
            case Holding.OnMandrel mandrel -> {}
            case Holding.OnStub stub -> {}
            case Holding.OnFaceplate plate -> {}
            case Holding.LaidAcross laid -> {}
            case Holding.InVice vice -> {}
            case Holding.OnTable table -> {}
            case Holding.Clamped clamped -> {}
        }
        return steps;
    }

    /** Whether the grip alone would not keep the work square. */
    private static boolean isShort(Holding.InChuck chuck) {
        return chuck.grip().length().isLessThan(GripRules.leastGrip(chuck.grip().diameter(), Length.ZERO, true));
    }

    /** What is seen to before the work goes in. */
    private static List<String> bearing(Holding.InChuck chuck, LengthUnit unit) {
        String size = LengthText.in(chuck.grip().diameter(), unit);
        return switch (chuck.bearing()) {
            case Holding.Bearing.Closing(boolean packed) -> packed ? List.of(PACKING) : List.of();
            case Holding.Bearing.Opening(boolean packed) -> packed ? List.of(PACKING) : List.of();
            case Holding.Bearing.SplitBush(Length outside, Length slit) ->
                List.of(
                        "Make a split bush first: Ø " + LengthText.in(outside, unit) + ", bored " + size
                                + " a close sliding fit, "
                                + LengthText.in(chuck.grip().length(), unit)
                                + " long, bore and outside at one setting.",
                        "Mark it against jaw 1, saw it through along one side, " + LengthText.in(slit, unit)
                                + " wide, and take off every burr.",
                        "Bush in the jaws with its mark at jaw 1 and the slit between two jaws, the work in the bush.");
            case Holding.Bearing.SoftJaws() ->
                List.of(
                        "Put soft jaws on the " + chuck.chuck() + " and close them on a ring or slug behind.",
                        "Bore " + (GripRules.isInStep(chuck.grip()) ? step(chuck.grip(), unit) : "them")
                                + " to fit the work as measured, " + size
                                + ", relieved in the corner, and try it in them.");
        };
    }

    /** A step as deep as it holds, with the edge of the work lying in its corner. */
    private static String step(Holding.Grip grip, LengthUnit unit) {
        return "a step in them, " + LengthText.in(grip.length(), unit) + " deep beyond the edge of the work,";
    }

    /** Steps for jaws that open in a bore. */
    static List<String> opening(Holding.InChuck chuck, LengthUnit unit) {
        var steps = new ArrayList<String>(bearing(chuck, unit));
        steps.add("Jaws of the " + chuck.chuck() + " reversed or stepped to open in the bore of "
                + LengthText.in(chuck.grip().diameter(), unit) + ", end "
                + chuck.headstock().other() + " outwards; set it back square against them.");
        if (chuck.jaws() == 4) {
            steps.add("Dial true to " + LengthText.in(chuck.runOut(), unit) + " before cutting.");
        }
        return steps;
    }

    private static Optional<String> packing(Choice.Gripped gripped) {
        return switch (gripped) {
            case Choice.Gripped.OnSection section -> Optional.of(PACKING);
            case Choice.Gripped.Raw raw -> Optional.empty();
            case Choice.Gripped.OnBore bore -> Optional.empty();
            case Choice.Gripped.OnCentres centres -> Optional.empty();
            case Choice.Gripped.OnFace face -> Optional.empty();
        };
    }

    private static void addSupport(Holding.Support support, List<String> steps) {
        switch (support) {
            case Holding.Support.None none -> {}
            case Holding.Support.Centre centre -> steps.add("Bring up the tailstock centre, greased, and lock it.");
            case Holding.Support.FixedSteady steady -> {
                steps.add("Clock the work true beside the jaws and at the steady before the pads touch it.");
                steps.add("Bring the pads of the fixed steady up until each just drags, with oil, and lock them.");
            }
            case Holding.Support.TravellingSteady steady ->
                steps.add("Bring up the tailstock centre, and set the travelling steady behind the tool.");
        }
    }

    /** What an old part is dialled by: the surfaces that stay. */
    static String dialled(Body.Turned body) {
        return body.outside().stream().anyMatch(section -> section.isThere() && section instanceof Section.Toothed)
                ? "Dial over a pin laid between the teeth, at four places round and at both ends: the tips are not to be"
                        + " trusted."
                : "Dial on a surface that stays and is not worn, at both ends of it.";
    }

    /** Steps for a part that comes back with its own centre holes. */
    static List<String> onOldCentres(Length dog, LengthUnit unit) {
        var steps = new ArrayList<String>();
        steps.add("Check with a test bar that the centres meet: no trial cut is taken on what stays.");
        steps.add(dog(dog, unit));
        steps.add(
                "Clean the old centre holes out and try a centre in them with blue: where one is bruised, scrape it.");
        steps.add(
                "Dial the surfaces that stay before the first cut: if they run out, the shaft is bent or a centre is.");
        return steps;
    }

    static List<String> betweenCentres(Length dog, LengthUnit unit) {
        return List.of(
                "Check that the centres meet: take a trial cut along the length and measure both ends.",
                dog(dog, unit));
    }

    private static String dog(Length diameter, LengthUnit unit) {
        return "Dog on the " + LengthText.in(diameter, unit)
                + " diameter, packed where it is finished; grease the centre.";
    }

    /** Steps for a mandrel in a bore of this size. */
    static List<String> mandrel(Mandrel mandrel, Length bore, LengthUnit unit) {
        return switch (mandrel.kind()) {
            case TAPER ->
                List.of(
                        "Oil the bore and press the work on the " + mandrel.name() + ", by hand press, not by hammer.",
                        "Between centres with a dog on the mandrel; cut towards its larger end.");
            case EXPANDING ->
                List.of(
                        "Wipe the bore, slide the work on the " + mandrel.name() + " and open it just enough to drive.",
                        "Between centres with a dog on the mandrel.");
            case STUB ->
                List.of(
                        "Chuck one of the " + mandrel.name() + " and turn it to slide into the bore, "
                                + LengthText.in(bore, unit) + ", with a shoulder to seat on; do not take it out again.",
                        "Slide the work on against the shoulder and open the mandrel by its screw, just enough to drive.");
        };
    }

    static List<String> vees(String vice) {
        return List.of("Lay the work in the " + vice + ", level, and clamp it close to the hole.");
    }

    static List<String> along(String vice) {
        return List.of(
                "Lay the work in the " + vice + " along the table, copper or card under every jaw and clamp.",
                "Clock along the top and along the side, and nip it down clear of the cutter.");
    }
}
