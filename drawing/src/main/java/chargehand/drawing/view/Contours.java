package chargehand.drawing.view;

import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Point;
import chargehand.measure.Length;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.List;

/**
 * Draws the outline of a turned part, above and below the axis, with the edges across it; where it is cut, the wall of the
 * bore and the hatching.
 */
record Contours(Look look, List<Opening> openings, List<List<Point>> cutOuts) {
    void draw(Pencil pencil) {
        for (Side side : Side.values()) {
            if (side.isCut(look.cut())) {
                drawCut(side, pencil);
            } else {
                drawOutside(side, pencil);
            }
        }
    }

    private void drawOutside(Side side, Pencil pencil) {
        AxialScale scale = look.scale();
        List<Point> outside = outside(side);
        pencil.line(LineStyle.WIDE, scale.onAxis(Length.ZERO), outside.getFirst());
        broken(side, false, outside).forEach(piece -> pencil.line(LineStyle.WIDE, piece));
        pencil.line(LineStyle.WIDE, outside.getLast(), scale.onAxis(look.solid().length()));
        for (Station edge : Contour.edges(seen(side))) {
            if (isWithin(edge)) {
                pencil.line(LineStyle.WIDE, scale.onAxis(edge.at()), side.at(scale, edge.at(), edge.radius()));
            }
        }
    }

    /** Whether an edge goes right round between the ends; on a polygon the flats draw their own. */
    private boolean isWithin(Station edge) {
        boolean onPolygon = look.solid().flats().stream()
                .anyMatch(
                        place -> edge.at().isMoreThan(place.from()) && edge.at().isLessThan(place.to()));
        return !onPolygon
                && edge.at().isPositive()
                && edge.at().isLessThan(look.solid().length());
    }

    private void drawCut(Side side, Pencil pencil) {
        AxialScale scale = look.scale();
        Profile hollow = look.solid().innerAtMost();
        List<Point> outside = outside(side);
        List<Point> inside = sided(side, Contour.above(hollow, scale));
        broken(side, false, outside).forEach(piece -> pencil.line(LineStyle.WIDE, piece));
        pencil.line(LineStyle.WIDE, scale.onAxis(Length.ZERO), outside.getFirst());
        pencil.line(LineStyle.WIDE, scale.onAxis(look.solid().length()), outside.getLast());
        for (List<Point> wall : walls(inside)) {
            broken(side, true, wall).forEach(piece -> pencil.line(LineStyle.WIDE, piece));
        }
        for (Station edge : Contour.edges(hollow)) {
            if (isWithin(edge)) {
                pencil.line(LineStyle.WIDE, scale.onAxis(edge.at()), side.at(scale, edge.at(), edge.radius()));
            }
        }
        List<Point> cut = sided(side, Contour.above(TeethLines.without(seen(side), look.solid()), scale));
        hatch(cut, inside, side, pencil);
    }

    private void hatch(List<Point> outside, List<Point> inside, Side side, Pencil pencil) {
        List<Point> region = new ArrayList<>(outside);
        region.addAll(inside.reversed());
        List<List<Point>> outlines = new ArrayList<>();
        outlines.add(region);
        cutOuts.stream()
                .filter(cutOut -> cutOut.stream().mapToDouble(Point::y).sum() * side.outward() > 0)
                .forEach(outlines::add);
        pencil.putAll(Hatching.of(look.solid()).within(outlines));
    }

    private List<Point> outside(Side side) {
        return sided(side, Contour.above(seen(side), look.scale()));
    }

    private Profile seen(Side side) {
        return FlatLines.seen(Flats.seen(look.solid(), side), look, side);
    }

    private static List<Point> sided(Side side, List<Point> above) {
        return side == Side.ABOVE ? above : Contour.mirrored(above);
    }

    /** The pieces of a bore's contour that are wall: those not on the axis. */
    private static List<List<Point>> walls(List<Point> inside) {
        List<List<Point>> walls = new ArrayList<>();
        List<Point> wall = new ArrayList<>();
        for (int i = 0; i < inside.size(); i++) {
            Point here = inside.get(i);
            boolean leavesAxis = i + 1 < inside.size() && inside.get(i + 1).y() != 0;
            if (here.y() != 0 || !wall.isEmpty() || leavesAxis) {
                wall.add(here);
            }
            if (here.y() == 0 && wall.size() > 1) {
                walls.add(List.copyOf(wall));
                wall.clear();
            }
        }
        if (wall.size() > 1) {
            walls.add(wall);
        }
        return walls;
    }

    private List<List<Point>> broken(Side side, boolean inside, List<Point> contour) {
        List<List<Point>> pieces = List.of(contour);
        for (Opening opening : openings) {
            if (opening.side() == side && opening.inside() == inside) {
                pieces = pieces.stream()
                        .flatMap(piece -> opening.leaves(piece).stream())
                        .toList();
            }
        }
        return pieces;
    }
}
