package chargehand.method.start;

import chargehand.method.plan.Holding;
import java.util.ArrayList;
import java.util.List;

/** What to try and look at on a holding before anything turns. */
final class HeldFast {
    private HeldFast() {}

    static List<String> of(Holding holding) {
        return switch (holding) {
            case Holding.InChuck chuck -> chuck(chuck);
            case Holding.InCollet collet ->
                supported("Collet closed tight on clean work, its key or bar off.", collet.support());
            case Holding.BetweenCentres centres ->
                List.of(
                        "Dog tight, its tail free in the slot, its screw not out.",
                        "Centre greased, no shake, quill and tailstock locked.");
            case Holding.OnMandrel mandrel ->
                List.of(
                        "Work tight on the mandrel: by hand it does not stir.",
                        "Dog tight, centres greased, quill and tailstock locked.");
            case Holding.OnStub stub ->
                List.of(
                        "Chuck key out; work tight on the mandrel: by hand it does not stir.",
                        "Cut light: only the bore drives the work.");
            case Holding.OnFaceplate plate ->
                List.of(
                        "Every clamp level and tight, a full nut on every bolt.",
                        "Spun by hand it stops anywhere; if it swings back, balance it.");
            case Holding.InDividingHead head ->
                supported("Chuck key out; head locked, sector arms set, work tight.", head.support());
            case Holding.LaidAcross laid -> List.of("Clamps tight, close to the cut: pushed, the work does not stir.");
            case Holding.InVice vice -> List.of("Vice tight, handle off; no parallel slides by hand.");
            case Holding.OnTable table -> List.of("Clamps level, bolts near the work, tight, out of the cutter's way.");
            case Holding.Clamped clamped -> List.of("Vice tight; far end of the bar borne up and marked.");
        };
    }

    private static List<String> chuck(Holding.InChuck chuck) {
        var checks = new ArrayList<String>();
        checks.add("Chuck key out, and on its hook.");
        checks.add(
                switch (chuck.bearing()) {
                    case Holding.Bearing.Closing closing ->
                        "All " + chuck.jaws() + " jaws tight, none out beyond the chuck's body.";
                    case Holding.Bearing.Opening opening ->
                        "All " + chuck.jaws() + " jaws tight in the bore, not so as to stretch it.";
                    case Holding.Bearing.SoftJaws soft -> "Soft jaws tight on their slides, work right home in them.";
                    case Holding.Bearing.SplitBush bush -> "Bush closed tight on the work: by hand it does not stir.";
                });
        checks.addAll(support(chuck.support()));
        return checks;
    }

    private static List<String> supported(String first, Holding.Support support) {
        var checks = new ArrayList<String>();
        checks.add(first);
        checks.addAll(support(support));
        return checks;
    }

    private static List<String> support(Holding.Support support) {
        return switch (support) {
            case Holding.Support.None none -> List.of();
            case Holding.Support.Centre centre -> List.of("Centre greased, no shake, quill and tailstock locked.");
            case Holding.Support.FixedSteady steady ->
                List.of("Steady tight on the bed; pads oiled, just touching, locked.");
            case Holding.Support.TravellingSteady steady ->
                List.of(
                        "Centre greased, no shake, quill and tailstock locked.",
                        "Travelling steady tight, pads oiled, clear of dog and jaws.");
        };
    }
}
