package chargehand.drawing.svg;

import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.Palette;
import chargehand.drawing.picture.Picture;
import java.util.Locale;
import java.util.function.Function;

/**
 * Writes a picture as SVG. Words stay words, one unit is one millimetre, and the same picture gives the same bytes.
 *
 * <p>The font is named, not carried. Where it is not installed, Arial or a font of the same widths stands in: its figures
 * are narrower, so that nothing runs over; kerning is off, so that words are as wide as they were measured.
 */
public final class Svg {
    private Svg() {}

    /** The picture as a file of its own, black on white. */
    public static String write(Picture picture) {
        return write(picture, Palette.PRINT);
    }

    /** The picture as a file of its own in the given colours. */
    public static String write(Picture picture, Palette palette) {
        String size = " width=\"%smm\" height=\"%smm\""
                .formatted(SvgText.number(picture.width()), SvgText.number(picture.height()));
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n" + svg(picture, size, ink -> hex(palette.colour(ink)));
    }

    /**
     * The picture as an element within a page: as large as the page makes it, in the colours of the page's custom
     * properties {@code --ink}, {@code --quiet}, {@code --marking} and {@code --paper}, or those of
     * {@link Palette#SCREEN} where the page has none.
     */
    public static String inline(Picture picture) {
        return svg(
                picture,
                " class=\"picture\"",
                ink -> "var(--%s,%s)".formatted(ink.name().toLowerCase(Locale.ROOT), hex(Palette.SCREEN.colour(ink))));
    }

    private static String svg(Picture picture, String size, Function<Ink, String> colours) {
        SvgMarks marks = new SvgMarks(colours);
        picture.marks().forEach(marks::add);
        String title = SvgText.escaped(picture.title());
        return """
                <svg xmlns="http://www.w3.org/2000/svg"%s viewBox="0 0 %s %s" role="img" aria-label="%s" \
                font-family="'IBM Plex Sans',Arial,'Liberation Sans',Helvetica,sans-serif" \
                style="font-kerning:none" stroke-linejoin="round">
                <title>%s</title>
                %s</svg>
                """.formatted(
                        size, SvgText.number(picture.width()), SvgText.number(picture.height()), title, title, marks);
    }

    private static String hex(int colour) {
        return String.format(Locale.ROOT, "#%06x", colour);
    }
}
