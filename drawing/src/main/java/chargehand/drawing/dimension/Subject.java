package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Inscription;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.Cut;
import chargehand.drawing.view.Look;
import chargehand.drawing.view.Reach;
import chargehand.drawing.view.Side;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.Part;

/** A turned part in its view, with what placing sizes on it needs to know. Coordinates are those of the view. */
record Subject(Part part, Body.Turned body, Look look) {
    SizeText text() {
        return new SizeText(part.unit());
    }

    Reach reach() {
        return new Reach(look);
    }

    double x(Length at) {
        return look.scale().x(at);
    }

    double size(Length size) {
        return look.scale().size(size);
    }

    /** Where an end face lies (mm). */
    double x(End end) {
        return end == End.A ? 0 : x(body.length());
    }

    /** The way out of the part at an end: -1 to the left, 1 to the right. */
    static int out(End end) {
        return end == End.A ? -1 : 1;
    }

    Point above(double x, double radius) {
        return new Point(x, -radius);
    }

    boolean isCut(Side side) {
        return side == Side.ABOVE ? look.cut() == Cut.FULL : look.cut() != Cut.NONE;
    }

    static Inscription inscription(Wording wording) {
        return new Inscription(wording, Placing.HEIGHT);
    }
}
