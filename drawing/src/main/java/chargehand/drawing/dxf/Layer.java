package chargehand.drawing.dxf;

import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.ScaledSheet.Role;

/**
 * The layers of the file. Release 12 has no widths of lines: the colours stand for pens, by the numbers every program of the
 * kind knows (1 red, 2 yellow, 3 green, 4 cyan, 6 magenta, 7 black or white, 8 grey).
 */
enum Layer {
    /** Visible edges. */
    OUTLINE(7, LineType.CONTINUOUS),
    /** Roots of threads, diagonals of flats, breaks: narrow lines of the thing itself. */
    THIN(4, LineType.CONTINUOUS),
    HIDDEN(3, LineType.DASHED),
    CENTRE(1, LineType.CENTER),
    /** Raw stock, adjacent parts. */
    STOCK(6, LineType.PHANTOM),
    HATCH(8, LineType.CONTINUOUS),
    /** Dimensions with their arrows and words. */
    DIM(2, LineType.CONTINUOUS),
    /** All other words. */
    TEXT(7, LineType.CONTINUOUS),
    /** Frame and title block. */
    FRAME(7, LineType.CONTINUOUS);

    private final int colour;
    private final LineType line;

    Layer(int colour, LineType line) {
        this.colour = colour;
        this.line = line;
    }

    int colour() {
        return colour;
    }

    LineType line() {
        return line;
    }

    static Layer ofLine(Role role, LineStyle style) {
        return switch (role) {
            case SHEET -> FRAME;
            case SIZES -> DIM;
            case VIEW ->
                switch (style) {
                    case FRAME, HEAVY, WIDE -> OUTLINE;
                    case SYMBOL, NARROW -> THIN;
                    case HATCH -> HATCH;
                    case HIDDEN -> HIDDEN;
                    case CHAIN -> CENTRE;
                    case DOUBLE_CHAIN -> STOCK;
                };
        };
    }

    static Layer ofFill(Role role) {
        return switch (role) {
            case SHEET -> FRAME;
            case SIZES -> DIM;
            case VIEW -> THIN;
        };
    }

    static Layer ofWords(Role role) {
        return role == Role.SIZES ? DIM : TEXT;
    }
}
