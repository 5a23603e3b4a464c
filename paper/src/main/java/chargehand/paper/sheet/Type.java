package chargehand.paper.sheet;

import chargehand.drawing.lettering.Lettering;

/** The letters of a method sheet: read at arm's length, so nothing that matters is under 14 point. */
final class Type {
    static final Lettering SMALL = Lettering.points(10);
    static final Lettering BODY = Lettering.points(14);
    static final Lettering STRONG = Lettering.points(14).semiBold();
    static final Lettering FIGURES = Lettering.points(18).semiBold();
    static final Lettering HEADING = Lettering.points(26).bold();
    static final Lettering NUMBER = Lettering.points(36).bold();

    private Type() {}
}
