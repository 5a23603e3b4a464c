package chargehand.drawing.picture;

import java.util.List;

/**
 * A drawing, or a part of one: a size on paper and what is drawn on it, first mark undermost.
 *
 * @param width (mm), more than zero
 * @param height (mm), more than zero
 * @param title what it shows, for people who cannot see it and for the file's own title
 * @param marks in the order they are drawn
 */
public record Picture(double width, double height, String title, List<Mark> marks) {
    public Picture {
        marks = List.copyOf(marks);
        if (!(width > 0 && height > 0 && width < 10_000 && height < 10_000)) {
            throw new IllegalArgumentException("a picture has a size, not " + width + " x " + height + " mm");
        }
    }
}
