package chargehand.method.start;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Operation;
import chargehand.trade.thread.ScrewThread;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.numbers.fraction.BigFraction;

/** Where to stop and look in the middle of an operation, before what cannot be taken back. Common practice. */
public final class StopFirst {
    private StopFirst() {}

    /** What to look at before going on, each a sentence or two; none where nothing is lost by going on. */
    public static List<String> of(Operation operation) {
        var stops = new ArrayList<String>(beforeCut(operation));
        if (operation.hold() && operation.settings().passes().size() > 1) {
            stops.add(
                    "Before the last pass measure what the one before it left, and put on what is still to come off by that"
                            + " reading, not by the sum of the dial.");
        }
        return List.copyOf(stops);
    }

    private static List<String> beforeCut(Operation operation) {
        LengthUnit unit = operation.settings().unit();
        return switch (operation.cut()) {
            case Cut.ThreadOutside thread -> thread(thread.thread(), thread.way());
            case Cut.ThreadInside thread -> thread(thread.thread(), thread.way());
            case Cut.TurnTaper taper ->
                List.of(
                        "Before the last pass try the taper in its mate or measure it at both ends, and set it over by what"
                                + " is found.");
            case Cut.PartOff part ->
                List.of("Before parting off measure every size made in this holding: it does not go back true.");
            case Cut.MillFlats flats ->
                List.of("Touch each of the " + flats.sides()
                        + " flats first, a scratch deep, and see that the last is where the count says.");
            case Cut.CutTeeth teeth ->
                List.of(
                        "Touch every space first, a scratch deep, right round: count them, and see that the last meets the"
                                + " first.");
            case Cut.MillKeyway keyway ->
                List.of("Go in " + LengthText.in(Length.mm(0.2), unit)
                        + " first and measure width and place, then take the depth.");
            case Cut.SlotInBore slot ->
                List.of("Spindle locked, motor off at the wall: the saddle does the cutting. Go in "
                        + LengthText.in(Length.mm(0.2), unit) + " first and measure width and place.");
            case Cut.DrillCircle circle ->
                List.of("Centre all " + circle.count()
                        + " holes first and measure from one to the next all round before any" + " is drilled.");
            case Cut.DrillAcross across ->
                List.of("Centre first and measure from the end to the middle of the mark before the drill goes in.");
            case Cut.DrillHole hole ->
                List.of("Centre first and measure to the middle of the mark from both edges before the drill goes in.");
            case Cut.ReamTo ream -> List.of("See that the drill left a hole all round under the size of the reamer.");
            case Cut.ReamHole ream -> List.of("See that the drill left a hole all round under the size of the reamer.");
            case Cut.FaceEnd face -> List.of();
            case Cut.CentreHole centre -> List.of();
            case Cut.DrillAxial drill -> List.of();
            case Cut.BoreTo bore -> List.of();
            case Cut.RecessInBore recess -> List.of();
            case Cut.ConeInside cone -> List.of();
            case Cut.TurnDiameter turn -> List.of();
            case Cut.CutGroove groove -> List.of();
            case Cut.FinishEdge edge -> List.of();
            case Cut.SawOff saw -> List.of();
            case Cut.TapHole tap -> List.of();
            case Cut.MillFace face -> List.of();
            case Cut.Deburr deburr -> List.of();
        };
    }

    private static List<String> thread(ScrewThread thread, Cut.ThreadWay way) {
        return switch (way) {
            case SCREW_CUT ->
                List.of("Scratch the first pass just to be seen, stop, and lay a rule along it: " + lead(thread)
                        + (thread.leftHand() ? ", the tool running to the tailstock." : "."));
            case TAP_FROM_TAILSTOCK ->
                List.of("Turn the tap in by hand for the first two turns and see that it follows straight.");
            case TAP_BY_HAND -> List.of("After two turns set a square against the tap, two ways, and true it then.");
            case DIE_FROM_TAILSTOCK ->
                List.of("Turn the die on by hand for the first two turns and see that it starts square.");
        };
    }

    /** The lead as a rule or a screw gauge shows it. */
    private static String lead(ScrewThread thread) {
        BigFraction toTheInch = thread.lead().tpi();
        return toTheInch.getDenominatorAsInt() == 1
                ? toTheInch.getNumeratorAsInt() + " turns to the inch"
                : LengthText.in(thread.lead().length(), LengthUnit.MILLIMETRE) + " from turn to turn";
    }
}
