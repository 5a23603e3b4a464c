package chargehand.method.holding;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.plan.Holding;
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
            case Holding.LaidAcross laid -> {}
            case Holding.InVice vice -> {}
            case Holding.Clamped clamped -> {}
        }
        return steps;
    }

    /** What is seen to before the work goes in. */
    private static List<String> bearing(Holding.InChuck chuck, LengthUnit unit) {
        String size = LengthText.in(chuck.grip().diameter(), unit);
        return switch (chuck.bearing()) {
            case Holding.Bearing.Closing(boolean packed) -> packed ? List.of(PACKING) : List.of();
            case Holding.Bearing.Opening(boolean packed) -> packed ? List.of(PACKING) : List.of();
            case Holding.Bearing.SoftJaws() ->
                List.of(
                        "Put soft jaws on the " + chuck.chuck() + " and close them on a ring or slug behind.",
                        "Bore them to fit the work as measured, " + size
                                + ", relieved in the corner, and try it in them.");
        };
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
        };
    }

    private static void addSupport(Holding.Support support, List<String> steps) {
        switch (support) {
            case Holding.Support.None none -> {}
            case Holding.Support.Centre centre -> steps.add("Bring up the tailstock centre, greased, and lock it.");
            case Holding.Support.FixedSteady steady -> steps.add("Set the fixed steady on the turned place.");
            case Holding.Support.TravellingSteady steady ->
                steps.add("Bring up the tailstock centre, and set the travelling steady behind the tool.");
        }
    }

    static List<String> betweenCentres(Length dog, LengthUnit unit) {
        return List.of(
                "Check that the centres meet: take a trial cut along the length and measure both ends.",
                "Dog on the " + LengthText.in(dog, unit)
                        + " diameter, packed where it is finished; grease the centre.");
    }

    static List<String> mandrel(String mandrel) {
        return List.of(
                "Oil the bore and press the work on the " + mandrel + ", by hand press, not by hammer.",
                "Between centres with a dog on the mandrel; cut towards its larger end.");
    }

    static List<String> vees(String vice) {
        return List.of("Lay the work in the " + vice + ", level, and clamp it close to the hole.");
    }
}
