package chargehand.drawing.dxf;

import chargehand.drawing.picture.Arc;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.ScaledSheet;
import chargehand.drawing.picture.ScaledSheet.Role;
import java.util.ArrayList;
import java.util.List;

/**
 * What is left to be drawn where nothing can be painted over: lines under clear paper are cut off at its border, as at a
 * break or round words on hatching.
 */
final class Plot {
    private List<Drawn> drawn = new ArrayList<>();

    private Plot() {}

    static List<Drawn> of(ScaledSheet sheet) {
        Plot plot = new Plot();
        for (ScaledSheet.Group group : sheet.groups()) {
            group.marks().forEach(mark -> plot.add(group.role(), mark));
        }
        return plot.drawn;
    }

    private void add(Role role, Mark mark) {
        switch (mark) {
            case Mark.Line(LineStyle style, Ink ink, Point from, Point to) -> {
                if (from.distance(to) > 0) {
                    line(role, style, new Chain(List.of(new Trace.Straight(from, to)), false));
                }
            }
            case Mark.Stroke(LineStyle style, Ink ink, Path path) ->
                line(role, style, new Chain(Trace.along(path), path.closed()));
            case Mark.Circle(LineStyle style, Ink ink, Point centre, double radius) ->
                line(role, style, new Chain(List.of(new Trace.Round(Arc.round(centre, radius))), true));
            case Mark.Fill(Ink ink, Path path) -> fill(role, ink, Area.of(path));
            case Mark.Disc(Ink ink, Point centre, double radius) ->
                drawn.add(new Drawn.Dot(Layer.ofFill(role), centre, radius));
            case Mark.Words words -> drawn.add(new Drawn.Words(Layer.ofWords(role), words));
        }
    }

    private void line(Role role, LineStyle style, Chain chain) {
        drawn.add(new Drawn.Line(Layer.ofLine(role, style), LineType.of(style), chain));
    }

    private void fill(Role role, Ink ink, Area area) {
        switch (ink) {
            case PAPER -> clear(area);
            case INK, MARKING -> {
                if (area.isQuadrilateral()) {
                    drawn.add(new Drawn.Filled(Layer.ofFill(role), area.corners()));
                } else {
                    area.triangles().forEach(three -> drawn.add(new Drawn.Filled(Layer.ofFill(role), three)));
                }
            }
            case QUIET -> {}
        }
    }

    private void clear(Area area) {
        List<Drawn> left = new ArrayList<>();
        for (Drawn one : drawn) {
            if (one instanceof Drawn.Line(Layer layer, LineType type, Chain chain)) {
                chain.outside(area).forEach(rest -> left.add(new Drawn.Line(layer, type, rest)));
            } else {
                left.add(one);
            }
        }
        drawn = left;
    }
}
