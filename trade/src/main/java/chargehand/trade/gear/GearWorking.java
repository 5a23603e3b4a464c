package chargehand.trade.gear;

import chargehand.measure.Angle;
import chargehand.measure.AngleText;
import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;

/** The working of a spur wheel, all in millimetres as the formulas are, each result in both units. */
final class GearWorking {
    private static final Source INVOLUTE = Source.memory("Machinery's Handbook, involute spur gears");
    private static final int FINE = 4;

    private final Spur spur;
    private final LengthUnit unit;
    private final Working working;

    GearWorking(Spur spur, LengthUnit unit, Working working) {
        this.spur = spur;
        this.unit = unit;
        this.working = working;
    }

    private void step(String say, String formula, String numbers, double result, Source source) {
        working.step(say, formula, numbers, LengthText.both(Length.mm(result), unit), source);
    }

    private static String mm(double millimetres) {
        return Figures.atMost(FINE, millimetres);
    }

    void blank() {
        String m = mm(spur.module());
        String x = mm(spur.shift());
        ToothSystem system = spur.system();
        step("Pitch diameter", "d = m z", m + " × " + spur.teeth(), spur.pitchDiameter(), Source.GEOMETRY);
        step(
                "Addendum, above the pitch circle",
                "ha = m (" + mm(system.addendum()) + " + x)",
                m + " × (" + mm(system.addendum()) + " + " + x + ")",
                spur.addendum(),
                system.source());
        String extra = system.extra() == 0 ? "" : " + " + mm(system.extra());
        step(
                "Dedendum, below the pitch circle",
                "hf = m (" + mm(system.dedendum()) + " − x)" + extra,
                m + " × (" + mm(system.dedendum()) + " − " + x + ")" + extra,
                spur.dedendum(),
                system.source());
        diameters();
    }

    private void diameters() {
        String d = mm(spur.pitchDiameter());
        step("Outside diameter", "d + 2 ha", d + " + 2 × " + mm(spur.addendum()), spur.outside(), Source.GEOMETRY);
        step("Root diameter", "d − 2 hf", d + " − 2 × " + mm(spur.dedendum()), spur.root(), Source.GEOMETRY);
        step(
                "Depth to cut",
                "ha + hf",
                mm(spur.addendum()) + " + " + mm(spur.dedendum()),
                spur.addendum() + spur.dedendum(),
                Source.GEOMETRY);
        step("Base circle", "db = d cos α", d + " × cos " + angle(spur.pressureAngle()), spur.base(), INVOLUTE);
        step(
                "Thickness of a tooth along the pitch circle",
                "s = m (π / 2 + 2 x tan α)",
                mm(spur.module()) + " × (π / 2 + 2 × " + mm(spur.shift()) + " × tan " + angle(spur.pressureAngle())
                        + ")",
                spur.circularThickness(),
                INVOLUTE);
    }

    void chordal() {
        String d = mm(spur.pitchDiameter());
        String s = mm(spur.circularThickness());
        step(
                "Chordal thickness, as a tooth calliper reads it",
                "d sin(s / d)",
                d + " × sin(" + s + " / " + d + ") (radians)",
                spur.chordalThickness(),
                INVOLUTE);
        step(
                "Height to set the tooth calliper to",
                "ha + d / 2 (1 − cos(s / d))",
                mm(spur.addendum()) + " + " + d + " / 2 × (1 − cos(" + s + " / " + d + "))",
                spur.chordalHeight(),
                INVOLUTE);
    }

    void constantChord() {
        String s = mm(spur.circularThickness());
        String alpha = angle(spur.pressureAngle());
        step("Constant chord", "c = s cos² α", s + " × cos² " + alpha, spur.constantChord(), INVOLUTE);
        step(
                "Height to set the tooth calliper to for it",
                "ha − c / 2 tan α",
                mm(spur.addendum()) + " − " + mm(spur.constantChord()) + " / 2 × tan " + alpha,
                spur.constantChordHeight(),
                INVOLUTE);
    }

    void span(int over) {
        step(
                "Span over " + over + " teeth",
                "W = m cos α (π (k − 1/2) + z inv α + 2 x tan α)",
                mm(spur.module()) + " × cos " + angle(spur.pressureAngle()) + " × (π × " + (over - 0.5) + " + "
                        + spur.teeth() + " × " + Figures.atMost(6, Involute.of(spur.alpha())) + " + 2 × "
                        + mm(spur.shift()) + " × tan " + angle(spur.pressureAngle()) + ")",
                spur.span(over),
                INVOLUTE);
    }

    void pins(double pin) {
        double over = spur.overPins(pin);
        boolean odd = spur.teeth() % 2 != 0;
        double phi = Math.acos(spur.base() * (odd ? Math.cos(Math.PI / 2 / spur.teeth()) : 1) / (over - pin));
        working.step(
                "Pressure angle where the pins rest",
                "inv φ = dp / db − π / (2 z) + inv α + 2 x tan α / z",
                mm(pin) + " / " + mm(spur.base()) + " − π / (2 × " + spur.teeth() + ") + "
                        + Figures.atMost(6, Involute.of(spur.alpha())) + " + 2 × " + mm(spur.shift()) + " × tan α / "
                        + spur.teeth(),
                "φ = " + angle(Angle.radians(phi)),
                INVOLUTE);
        String across = mm(spur.base()) + " / cos " + angle(Angle.radians(phi));
        step(
                odd ? "Over pins; with odd teeth they lie not quite opposite" : "Over pins",
                odd ? "db / cos φ × cos(90° / z) + dp" : "db / cos φ + dp",
                (odd ? across + " × cos(90° / " + spur.teeth() + ")" : across) + " + " + mm(pin),
                over,
                INVOLUTE);
    }

    private static String angle(Angle angle) {
        return AngleText.degrees(angle, FINE);
    }
}
