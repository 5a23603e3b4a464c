package chargehand.drawing.view;

import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.part.Across;
import chargehand.part.Feature;
import java.util.ArrayList;
import java.util.List;

/** What the features across a turned part add to its side view: their own lines, and what they take from the outline. */
final class AcrossLines {
    final Pencil pencil = new Pencil();
    final List<Opening> openings = new ArrayList<>();
    final List<List<Point>> cutOuts = new ArrayList<>();

    static AcrossLines of(Look look) {
        AcrossLines lines = new AcrossLines();
        List<Across> all = look.solid().across();
        Bearing turn = look.turn();
        for (Across feature : all) {
            Bearing bearing = Bearing.of(feature, turn);
            int before = lines.pencil.marks().size();
            switch (feature) {
                case Across.CrossHole hole -> new HoleLines(look, hole, lines).draw(bearing);
                case Across.Keyway keyway -> new KeywayLines(look, keyway, lines).draw(bearing);
                case Across.TaperPin pin -> new HoleLines(look, pin.drilled(), lines).draw(bearing);
                case Across.Slit slit -> new SlitLines(look, slit, lines).draw(bearing);
                case Across.Flat flat -> new FlatLines(look, flat, lines).draw(bearing);
            }
            lines.quieten(feature, before);
        }
        BoreGrooveLines.draw(look, lines);
        FaceHoleLines.draw(look, lines);
        EndSlotLines.draw(look, lines);
        return lines;
    }

    /** Draws what was added for a feature that was there already as an adjacent part is drawn. */
    void quieten(Feature feature, int before) {
        if (feature.isThere()) {
            List<Mark> marks = new ArrayList<>(pencil.marks());
            marks.subList(before, marks.size()).replaceAll(AlreadyThere::quiet);
            pencil.replace(marks);
        }
    }
}
