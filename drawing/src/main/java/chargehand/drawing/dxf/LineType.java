package chargehand.drawing.dxf;

import chargehand.drawing.picture.LineStyle;
import java.util.List;
import java.util.Locale;

/** The kinds of line that the file defines, each after one line style. */
enum LineType {
    CONTINUOUS("Solid line", LineStyle.WIDE),
    DASHED("Hidden edges", LineStyle.HIDDEN),
    CENTER("Axes and pitch circles", LineStyle.CHAIN),
    PHANTOM("Raw stock and adjacent parts", LineStyle.DOUBLE_CHAIN);

    private final String description;
    private final LineStyle style;

    LineType(String description, LineStyle style) {
        this.description = description;
        this.style = style;
    }

    static LineType of(LineStyle style) {
        return switch (style) {
            case FRAME, HEAVY, WIDE, SYMBOL, NARROW, HATCH -> CONTINUOUS;
            case HIDDEN -> DASHED;
            case CHAIN -> CENTER;
            case DOUBLE_CHAIN -> PHANTOM;
        };
    }

    String description() {
        return description;
    }

    /** Dashes and gaps in turn (mm on paper); none for a continuous line. */
    List<Double> pattern() {
        return style.pattern();
    }

    @Override
    public String toString() {
        return name().toUpperCase(Locale.ROOT);
    }
}
