package chargehand.trade.holding;

import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;

/** The working of a split bush, in millimetres, newtons and megapascals as its formulas are. */
record SplitBushWorking(SplitBush bush, LengthUnit unit, Working working) {
    private static final Source RING = Source.memory("curved-beam theory of a slit ring, as for piston rings");

    private String length(double mm) {
        return LengthText.both(Length.mm(mm), unit);
    }

    private static String mm(double number) {
        return Figures.atMost(3, number);
    }

    void sizes(boolean given) {
        working.step(
                "Bore",
                "work + clearance",
                mm(bush.work()) + " + " + mm(bush.clearance()),
                length(bush.bore()),
                Source.COMMON_PRACTICE);
        if (given) {
            working.step(
                    "Wall",
                    "(outside − bore) / 2",
                    "(" + mm(bush.outside()) + " − " + mm(bush.bore()) + ") / 2",
                    length(bush.wall()),
                    Source.GEOMETRY);
        } else {
            working.fact("Wall, an eighth of the work within reason", length(bush.wall()), Source.COMMON_PRACTICE);
        }
        working.step(
                "Slit, so wide that it could close twice as far as it must",
                "2 π c, at least 1.5 mm, in half millimetres",
                "2 π × " + mm(bush.clearance()),
                length(bush.slit()),
                Source.COMMON_PRACTICE);
        working.step(
                "Falls in diameter until the slit is shut",
                "slit / π",
                mm(bush.slit()) + " / π",
                length(bush.closes()),
                Source.GEOMETRY);
    }

    void closing() {
        String c = mm(bush.clearance());
        String e = Figures.four(bush.elastic());
        working.step(
                "Pressure all round that closes it on the work, R its mean radius",
                "c E t³ / (36 R⁴)",
                c + " × " + e + " × " + mm(bush.wall()) + "³ / (36 × " + mm(bush.meanRadius()) + "⁴)",
                Figures.four(bush.closingPressure()) + " MPa",
                RING);
        working.step(
                "Push of the jaws that this takes",
                "p 2 π R L",
                Figures.four(bush.closingPressure()) + " × 2 π × " + mm(bush.meanRadius()) + " × " + mm(bush.length()),
                Figures.four(bush.closingForce()) + " N",
                Source.GEOMETRY);
        working.step(
                "Stress opposite the slit when closed",
                "12 p (R / t)²",
                "12 × " + Figures.four(bush.closingPressure()) + " × (" + mm(bush.meanRadius()) + " / "
                        + mm(bush.wall()) + ")²",
                Figures.four(bush.closingStress()) + " MPa",
                RING);
        working.fact(
                "Stress allowed: 0.8 of the yield strength, or a third of the tensile strength where there is no yield",
                Figures.four(bush.allowedStress()) + " MPa",
                bush.material().strength().source());
    }

    void holding(double push, double friction) {
        String left = Figures.four(bush.pushOnWork(push));
        working.step(
                "Push that is left for the work",
                "F − closing, nothing where closing takes it all",
                Figures.four(push) + " − " + Figures.four(bush.closingForce()),
                left + " N",
                Source.GEOMETRY);
        working.step(
                "Pressure on the work",
                "F / (π d L)",
                left + " / (π × " + mm(bush.work()) + " × " + mm(bush.length()) + ")",
                Figures.four(bush.pressureOnWork(push)) + " MPa",
                Source.GEOMETRY);
        working.step(
                "Torque at which the work slips",
                "μ F d / 2",
                Figures.four(friction) + " × " + left + " × " + mm(bush.work()) + " / 2",
                Figures.four(bush.torqueHeld(push, friction) / 1000) + " Nm",
                Source.COMMON_PRACTICE);
    }
}
