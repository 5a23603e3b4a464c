package chargehand.drawing.dxf;

import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.ScaledSheet;
import chargehand.measure.LengthUnit;

/**
 * From the sheet to the thing at full size: x to the right and y upward from the origin of the main view, in the unit the
 * sizes are written in.
 *
 * @param zero the origin on the sheet
 * @param factor units for each millimetre on paper
 */
record FullSize(Point zero, double factor) {
    static FullSize of(ScaledSheet sheet) {
        double unit = sheet.unit() == LengthUnit.INCH ? 25.4 : 1;
        return new FullSize(sheet.zero(), 1 / (sheet.scale() * unit));
    }

    double x(Point point) {
        return (point.x() - zero.x()) * factor;
    }

    double y(Point point) {
        return (zero.y() - point.y()) * factor;
    }

    /** A length, whatever its direction. */
    double size(double onPaper) {
        return onPaper * factor;
    }
}
