package chargehand.drawing.sheet;

/** The scales of ISO 5455. */
public enum DrawingScale {
    TEN_TO_ONE(10, 1),
    FIVE_TO_ONE(5, 1),
    TWO_TO_ONE(2, 1),
    FULL(1, 1),
    ONE_TO_TWO(1, 2),
    ONE_TO_FIVE(1, 5),
    ONE_TO_TEN(1, 10),
    ONE_TO_TWENTY(1, 20),
    ONE_TO_FIFTY(1, 50),
    ONE_TO_HUNDRED(1, 100);

    private final int paper;
    private final int part;

    DrawingScale(int paper, int part) {
        this.paper = paper;
        this.part = part;
    }

    /** Paper over part: 0.5 for 1:2. */
    public double factor() {
        return (double) paper / part;
    }

    /** As the title block says it: {@code 1:2}. */
    public String text() {
        return paper + ":" + part;
    }
}
