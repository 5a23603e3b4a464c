package chargehand.drawing.sheet;

import chargehand.drawing.picture.Box;

/**
 * Trimmed sheets of ISO 5457, A4 upright, larger ones lying. The border is 20 mm at the left for filing and 10 mm at the
 * other sides (from memory of the standard).
 */
public enum SheetSize {
    A4(210, 297),
    A3(420, 297),
    A2(594, 420),
    A1(841, 594);

    private static final double FILING = 20;
    private static final double BORDER = 10;

    private final double width;
    private final double height;

    SheetSize(double width, double height) {
        this.width = width;
        this.height = height;
    }

    public double width() {
        return width;
    }

    public double height() {
        return height;
    }

    /** The frame round the drawing space. */
    public Box frame() {
        return new Box(FILING, BORDER, width - BORDER, height - BORDER);
    }
}
