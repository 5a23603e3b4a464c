package chargehand.paper.sheet;

/** The A4 page of a method sheet, in millimetres: wide at the left to be punched. */
final class Page {
    static final double WIDTH = 210;
    static final double HEIGHT = 297;
    static final double LEFT = 20;
    static final double RIGHT = WIDTH - 12;
    static final double TOP = 12;
    static final double FOOT = HEIGHT - 12;

    /** The lowest that what belongs to the set-up may reach. */
    static final double BOTTOM = FOOT - 8;

    static final double TEXT_WIDTH = RIGHT - LEFT;

    private Page() {}
}
