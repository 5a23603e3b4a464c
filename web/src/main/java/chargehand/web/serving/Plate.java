package chargehand.web.serving;

import chargehand.drawing.picture.Picture;
import chargehand.drawing.svg.Svg;
import java.util.Locale;

/** A picture within a page: as wide as there is room, but no larger than its letters are good to read. */
public final class Plate {
    /** At this many pixels to the millimetre, letters of 3.5 mm are as high as the page's own. */
    private static final double PIXELS_PER_MM = 5;

    private Plate() {}

    /** The picture as an element of a page. */
    public static String of(Picture picture) {
        return String.format(
                Locale.ROOT,
                "<div class=\"plate\" style=\"max-width:%.0fpx\">%s</div>",
                picture.width() * PIXELS_PER_MM,
                Svg.inline(picture));
    }
}
