package chargehand.web.serving;

import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sheet.SeenLengths;
import chargehand.drawing.svg.Svg;
import java.util.Locale;

/** A picture within a page: as wide as there is room, but no larger than its letters are good to read. */
public final class Plate {
    /** At this many pixels to the millimetre, letters of 3.5 mm are as high as the page's own. */
    private static final double PIXELS_PER_MM = 5;

    private Plate() {}

    /** Half of what a fingertip covers, where lengths leave so much room (mm). */
    private static final double HALF_WIDE = 4.6;

    private static final double HALF_HIGH = 4;
    private static final String END = "</svg>";

    /** The picture as an element of a page. */
    public static String of(Picture picture) {
        return plate(picture, Svg.inline(picture));
    }

    /** The same, its lengths leading to the places of a page that are named after their faces. */
    static String of(SeenLengths seen) {
        String svg = Svg.inline(seen.picture()).stripTrailing();
        StringBuilder taps = new StringBuilder("<g aria-hidden=\"true\">");
        seen.spots().forEach(spot -> taps.append(tap(spot)));
        return plate(seen.picture(), svg.substring(0, svg.length() - END.length()) + taps.append("</g>") + END);
    }

    private static String tap(SeenLengths.Spot spot) {
        Point middle = spot.words().centre();
        double wide = Math.max(HALF_WIDE, spot.words().width() / 2 + 1);
        return String.format(
                Locale.ROOT,
                "<a class=\"tap\" tabindex=\"-1\" href=\"#length-%d-%d\">"
                        + "<rect x=\"%.1f\" y=\"%.1f\" width=\"%.1f\" height=\"%.1f\"/></a>",
                spot.length().from(),
                spot.length().to(),
                middle.x() - wide,
                middle.y() - HALF_HIGH,
                2 * wide,
                2 * HALF_HIGH);
    }

    private static String plate(Picture picture, String svg) {
        return String.format(
                Locale.ROOT,
                "<div class=\"plate\" style=\"max-width:%.0fpx\">%s</div>",
                picture.width() * PIXELS_PER_MM,
                svg);
    }
}
