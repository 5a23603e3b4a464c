package chargehand.trade.gear;

import chargehand.measure.Angle;

/**
 * One spur wheel. Everything is in millimetres and radians.
 *
 * @param module pitch diameter over teeth
 * @param shift how far the cutter was drawn out, over the module
 */
record Spur(int teeth, double module, Angle pressureAngle, ToothSystem system, double shift) {
    /** Roundings that make half a tooth more or less than half. */
    private static final double TIE = 1e-9;

    double alpha() {
        return pressureAngle.inRadians();
    }

    double pitchDiameter() {
        return module * teeth;
    }

    double addendum() {
        return module * (system.addendum() + shift);
    }

    double dedendum() {
        return module * (system.dedendum() - shift) + system.extra();
    }

    double outside() {
        return pitchDiameter() + 2 * addendum();
    }

    double root() {
        return pitchDiameter() - 2 * dedendum();
    }

    double base() {
        return pitchDiameter() * Math.cos(alpha());
    }

    double circularPitch() {
        return Math.PI * module;
    }

    /** Along the pitch circle, with no backlash. */
    double circularThickness() {
        return module * (Math.PI / 2 + 2 * shift * Math.tan(alpha()));
    }

    /** Half the angle that a tooth takes of the pitch circle. */
    private double halfToothAngle() {
        return circularThickness() / pitchDiameter();
    }

    double chordalThickness() {
        return pitchDiameter() * Math.sin(halfToothAngle());
    }

    /** From the tip down to the chord. */
    double chordalHeight() {
        return addendum() + pitchDiameter() / 2 * (1 - Math.cos(halfToothAngle()));
    }

    /** Between the points where a rack touches both flanks of a tooth: the same for wheels of all sizes. */
    double constantChord() {
        double cos = Math.cos(alpha());
        return circularThickness() * cos * cos;
    }

    /** From the tip down to that chord. */
    double constantChordHeight() {
        return addendum() - constantChord() / 2 * Math.tan(alpha());
    }

    /** Over so many teeth, along the base tangent. */
    double span(int over) {
        return module
                * Math.cos(alpha())
                * (Math.PI * (over - 0.5) + teeth * Involute.of(alpha()) + 2 * shift * Math.tan(alpha()));
    }

    /** How many teeth to measure over so that the jaws touch near the pitch circle. */
    int bestOver() {
        double part = shift / teeth;
        double cos = Math.cos(alpha());
        double root = Math.sqrt((1 + 2 * part) * (1 + 2 * part) - cos * cos);
        double share = (root / cos - Involute.of(alpha()) - 2 * part * Math.tan(alpha())) / Math.PI;
        double over = teeth * share + 0.5;
        return (int) Math.max(1, Math.rint(Math.round(over / TIE) * TIE));
    }

    /** Whether calliper jaws over so many teeth touch the flanks, above the base circle and below the tips. */
    boolean spans(int over) {
        double touch = Math.hypot(span(over), base());
        return over >= 1 && over < teeth && touch <= outside() && touch >= Math.max(base(), root());
    }

    /** Half the angle of a space on the base circle, with a pin of this diameter laid in it; below nought the pin drops. */
    private double pinInvolute(double pin) {
        return pin / base() - Math.PI / (2 * teeth) + Involute.of(alpha()) + 2 * shift * Math.tan(alpha()) / teeth;
    }

    /** Whether a pin rests on both flanks below their tips, clear of the bottom and proud of the tips. */
    boolean takes(double pin) {
        if (pinInvolute(pin) <= 0) {
            return false;
        }
        double along = base() * Math.tan(Involute.inverse(pinInvolute(pin))) - pin;
        boolean onFlanks = along >= 0 && Math.hypot(base(), along) <= outside();
        return onFlanks && overPins(pin) > outside() && overPins(pin) - 2 * pin > root();
    }

    /** Over two pins in spaces as nearly opposite as there are; {@link #takes} must hold. */
    double overPins(double pin) {
        double across = base() / Math.cos(Involute.inverse(Math.max(0, pinInvolute(pin))));
        return (teeth % 2 == 0 ? across : across * Math.cos(Math.PI / 2 / teeth)) + pin;
    }

    /** The fewest teeth of this system and shift that a rack does not undercut. */
    double fewestWithoutUndercut() {
        double sin = Math.sin(alpha());
        return 2 * (system.addendum() - shift) / (sin * sin);
    }
}
