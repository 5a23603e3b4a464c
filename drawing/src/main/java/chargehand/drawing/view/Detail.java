package chargehand.drawing.view;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.shape.Station;
import java.util.List;

/**
 * A small place of a side view, drawn larger within a circle. The place is drawn anew at its own scale, not stretched, so
 * that threads keep the room between crest and root and hatching keeps its pitch.
 *
 * @param look the part as the whole view shows it
 * @param side the half of the view that the place lies in
 * @param middle of the place
 * @param reach how far round its middle it is shown, on the part
 * @param scale paper over part of the larger view
 */
public record Detail(Look look, Side side, Station middle, Length reach, double scale) {
    /** The part at the larger scale, unbroken: the frame of {@link #view()}, in which sizes may be placed. */
    public Look enlarged() {
        return look.at(AxialScale.of(scale));
    }

    /** Where the middle lies in the whole view. */
    public Point placeInWhole() {
        return side.at(look.scale(), middle.at(), middle.radius());
    }

    /** Where the middle lies in the larger view. */
    public Point place() {
        return side.at(enlarged().scale(), middle.at(), middle.radius());
    }

    /** The radius of the circle round the place in the whole view (mm). */
    public double radiusInWhole() {
        return look.scale().size(reach);
    }

    /** The radius of the larger view (mm). */
    public double radius() {
        return enlarged().scale().size(reach);
    }

    /** The narrow circle that shows the place in the whole view, in that view's frame. */
    public Mark ring() {
        return new Mark.Circle(LineStyle.NARROW, Ink.INK, placeInWhole(), radiusInWhole());
    }

    /** The place drawn larger, with the narrow circle it ends at, in the frame of {@link #enlarged()}. */
    public View view() {
        View whole = SideView.of(enlarged());
        Clip clip = Clip.along(Chords.circle(place(), radius()));
        Pencil pencil = new Pencil();
        pencil.putAll(clip.within(whole.marks()));
        pencil.put(new Mark.Circle(LineStyle.NARROW, Ink.INK, place(), radius()));
        Box circle = Box.around(List.of(place().moved(-radius(), -radius()), place().moved(radius(), radius())));
        return View.of(
                pencil.marks(),
                whole.hatched().stream()
                        .flatMap(box -> box.common(circle).stream())
                        .toList());
    }
}
