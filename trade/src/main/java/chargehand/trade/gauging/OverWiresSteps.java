package chargehand.trade.gauging;

import chargehand.measure.AngleText;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import chargehand.trade.thread.ScrewThread;
import java.util.Locale;

/** Writes down a measurement over wires. */
final class OverWiresSteps {
    private static final int ANGLE_DECIMALS = 2;
    private static final Length WORTH_A_CAUTION = Length.mm(0.005);

    private final ScrewThread thread;
    private final ThreeWires wires;
    private final LengthUnit unit;
    private final Working working;

    OverWiresSteps(ScrewThread thread, ThreeWires wires, LengthUnit unit, Working working) {
        this.thread = thread;
        this.wires = wires;
        this.unit = unit;
        this.working = working;
    }

    void wires() {
        String half = AngleText.degrees(thread.form().includedAngle().half(), ANGLE_DECIMALS);
        working.fact(
                thread.designation() + " has half an angle α of " + half + " between its flanks",
                "pitch " + text(thread.pitch().length()) + ", effective diameter " + text(thread.effective()),
                new Source(thread.form().source()));
        working.step(
                "Best wire: it touches at the effective diameter",
                "w = p / (2 cos α)",
                figures(thread.pitch().length()) + " / (2 cos " + half + ")",
                text(wires.best()),
                ThreeWires.SOURCE);
        working.fact(
                wires.wireLimitsArePrinted()
                        ? "Wires that may be used, as handbooks print them"
                        : "Wires that may be used: from flush with the crests to the top of the flanks",
                text(wires.smallest()) + " to " + text(wires.largest()),
                wires.wireLimitsArePrinted() ? Source.memory("Machinery's Handbook") : Source.GEOMETRY);
    }

    void over(Length wire) {
        String factor = String.format(Locale.ROOT, "%.4f", wires.factor());
        working.step(
                "What the wires add to the effective diameter",
                "constant = w (1 + cosec α) − (p / 2) cot α",
                figures(wire) + " × " + factor + " − " + figures(wires.groove()),
                text(wires.constant(wire)),
                ThreeWires.SOURCE);
        working.step(
                "Over three wires",
                "M = E + constant",
                figures(thread.effective()) + " + " + figures(wires.constant(wire)),
                text(wires.over(wire)),
                ThreeWires.SOURCE);
        Length rake = wires.rake(wire);
        working.step(
                "The wires follow the helix and stand a little higher",
                "rake = w (√(cosec²α + cot²α tan²λ) − cosec α)",
                "w = " + figures(wire) + ", λ = " + AngleText.degrees(thread.helixAngle(), ANGLE_DECIMALS),
                text(rake),
                Source.memory("ASME B1.2"));
        if (rake.isMoreThan(WORTH_A_CAUTION)) {
            working.caution("The helix is steep: add the rake of " + text(rake) + " to the size over the wires.");
        }
        if (thread.isTaper()) {
            working.caution("On a taper thread this holds at the gauge plane only.");
        }
    }

    void reading(Length reading, Length wire) {
        working.step(
                "Effective diameter from the reading",
                "E = M − constant",
                figures(reading) + " − " + figures(wires.constant(wire)),
                text(wires.effective(reading, wire)),
                ThreeWires.SOURCE);
    }

    private String text(Length length) {
        return LengthText.both(length, unit);
    }

    private String figures(Length length) {
        return LengthText.figures(length, unit);
    }
}
