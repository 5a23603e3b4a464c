package chargehand.drawing.view;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.shape.Profile;
import java.util.ArrayList;
import java.util.List;

/** The side view of a turned part, its axis along y = 0 and end A at x = 0. */
public final class SideView {
    /** How far an axis runs past what it belongs to (mm). */
    private static final double OVERRUN = 3;

    private SideView() {}

    public static View of(Look look) {
        Pencil pencil = new Pencil();
        List<Box> hatched = new ArrayList<>();
        if (look.cut() == Cut.LOCAL) {
            brokenOut(look, pencil, hatched);
        } else {
            pencil.putAll(drawn(look));
            hatched.addAll(hatched(look));
        }
        axis(look, pencil);
        Breaks.draw(look, pencil);
        return View.of(pencil.marks(), hatched);
    }

    /** All but the axis and the breaks. */
    private static List<Mark> drawn(Look look) {
        Pencil pencil = new Pencil();
        AcrossLines across = AcrossLines.of(look);
        new Contours(look, across.openings, across.cutOuts).draw(pencil);
        Flats.draw(look, pencil);
        new ThreadLines(look).draw(pencil);
        new TeethLines(look).draw(pencil);
        new KnurlLines(look).draw(pencil);
        pencil.replace(EndSlotLines.notched(look, new AlreadyThere(look).restyled(pencil.marks())));
        pencil.putAll(across.pencil.marks());
        return pencil.marks();
    }

    /** The outside, and in its break-outs what a section of the whole would show there. */
    private static void brokenOut(Look look, Pencil pencil, List<Box> hatched) {
        Look whole = look.cut(Cut.NONE);
        Look section = look.cut(Cut.FULL);
        List<Point> silhouette = new ArrayList<>(Contour.above(Flats.seen(look.solid(), Side.ABOVE), look.scale()));
        silhouette.addAll(Contour.below(Flats.seen(look.solid(), Side.BELOW), look.scale())
                .reversed());
        List<Mark> marks = drawn(whole);
        for (Breakout place : Breakout.of(look)) {
            marks = place.put(marks, drawn(section), silhouette);
            hatched(section).stream()
                    .flatMap(box -> box.common(place.bounds()).stream())
                    .forEach(hatched::add);
        }
        pencil.putAll(marks);
    }

    private static void axis(Look look, Pencil pencil) {
        AxialScale scale = look.scale();
        Point from = scale.onAxis(Length.ZERO).moved(-OVERRUN, 0);
        Point to = scale.onAxis(look.solid().length()).moved(OVERRUN, 0);
        pencil.line(LineStyle.CHAIN, from, to);
    }

    /** Boxes over the cut material, one for each stretch between two corners of the outside. */
    private static List<Box> hatched(Look look) {
        List<Box> boxes = new ArrayList<>();
        Profile outer = look.solid().outer();
        for (Side side : Side.values()) {
            if (side.isCut(look.cut())) {
                List<Length> ends =
                        outer.stations().stream().map(s -> s.at()).distinct().toList();
                for (int i = 1; i < ends.size(); i++) {
                    boxes.add(hatched(look, side, ends.get(i - 1), ends.get(i)));
                }
            }
        }
        return boxes;
    }

    private static Box hatched(Look look, Side side, Length from, Length to) {
        Length outer = look.solid().outer().cut(from, to).most(from, to);
        Length inner = Length.least(look.solid().innerAtMost().cut(from, to).least(from, to), outer);
        return Box.around(List.of(side.at(look.scale(), from, inner), side.at(look.scale(), to, outer)));
    }

    /** The breaks alone, to be drawn once more over what was put on the view. */
    public static List<Mark> breaks(Look look) {
        Pencil pencil = new Pencil();
        Breaks.draw(look, pencil);
        return pencil.marks();
    }
}
