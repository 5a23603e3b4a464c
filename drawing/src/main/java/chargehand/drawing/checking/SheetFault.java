package chargehand.drawing.checking;

import chargehand.drawing.picture.Point;
import java.util.Optional;

/**
 * One thing wrong with a sheet.
 *
 * @param say which one, in words
 * @param at where on the sheet, if it has one place
 */
public record SheetFault(FaultKind kind, String say, Optional<Point> at) {
    static SheetFault of(FaultKind kind, String say, Point at) {
        return new SheetFault(kind, say, Optional.of(at));
    }

    static SheetFault of(FaultKind kind, String say) {
        return new SheetFault(kind, say, Optional.empty());
    }
}
