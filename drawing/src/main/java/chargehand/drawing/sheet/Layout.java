package chargehand.drawing.sheet;

import chargehand.drawing.dimension.Dimensioned;
import chargehand.drawing.dimension.EndSizes;
import chargehand.drawing.dimension.KeySizes;
import chargehand.drawing.dimension.SizeText;
import chargehand.drawing.dimension.TurnedSizes;
import chargehand.drawing.picture.Box;
import chargehand.drawing.view.AxialScale;
import chargehand.drawing.view.Cut;
import chargehand.drawing.view.EndView;
import chargehand.drawing.view.Look;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.Part;
import chargehand.part.Section;
import chargehand.part.shape.Solid;
import java.util.ArrayList;
import java.util.List;

/**
 * The views of a turned part at one scale with their sizes, laid out in first-angle projection: the view from the left at
 * the right, the view from the right at the left, sections of keyways in a row below.
 */
final class Layout {
    private static final double BETWEEN = 12;
    private static final double BETWEEN_SECTIONS = 18;

    private final Part part;
    private final Body.Turned body;
    private final Solid solid;
    private final AxialScale scale;
    private final List<Placed> views = new ArrayList<>();

    /** A view and where its origin lies. */
    record Placed(Dimensioned view, double x, double y) {
        Box bounds() {
            return view.bounds().moved(x, y);
        }
    }

    private Layout(Part part, Body.Turned body, Solid solid, AxialScale scale) {
        this.part = part;
        this.body = body;
        this.solid = solid;
        this.scale = scale;
    }

    /** Lays out a part, keeping sizes within a width where they can be (mm). */
    static List<Placed> of(Part part, Body.Turned body, Solid solid, AxialScale scale, double width) {
        Layout layout = new Layout(part, body, solid, scale);
        layout.lay(width);
        return layout.views;
    }

    static Box bounds(List<Placed> views) {
        return views.stream().map(Placed::bounds).reduce(Box::with).orElseThrow();
    }

    private void lay(double width) {
        Cut cut = body.inside().isEmpty() ? Cut.NONE : Cut.HALF;
        List<Placed> ends = ends();
        double length = scale.x(body.length());
        double taken = ends.stream()
                .mapToDouble(end -> end.view.bounds().width() + BETWEEN)
                .sum();
        double margin = Math.max(0, (width - taken - length) / 2);
        Box limits = new Box(-margin, -10_000, length + margin, 10_000);
        Dimensioned main = TurnedSizes.of(part, body, new Look(solid, scale, cut), limits);
        views.add(new Placed(main, 0, 0));
        for (Placed end : ends) {
            Box own = end.view.bounds();
            double x = end.x > 0
                    ? main.bounds().right() + BETWEEN - own.left()
                    : main.bounds().left() - BETWEEN - own.right();
            views.add(new Placed(end.view, x, 0));
        }
        sections();
    }

    /** The end views that polygons need, with x telling on which side they go. */
    private List<Placed> ends() {
        List<Section.Polygon> fromA = new ArrayList<>();
        List<Section.Polygon> fromB = new ArrayList<>();
        for (Solid.FlatsPlace place : solid.flats()) {
            boolean left = EndView.shows(solid, place, End.A) || !EndView.shows(solid, place, End.B);
            (left ? fromA : fromB).add(polygon(place.name()));
        }
        List<Placed> ends = new ArrayList<>();
        if (!fromA.isEmpty()) {
            ends.add(new Placed(end(End.A, fromA), 1, 0));
        }
        if (!fromB.isEmpty()) {
            ends.add(new Placed(end(End.B, fromB), -1, 0));
        }
        return ends;
    }

    private Section.Polygon polygon(String name) {
        return body.outside().stream()
                .filter(Section.Polygon.class::isInstance)
                .map(Section.Polygon.class::cast)
                .filter(polygon -> polygon.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private Dimensioned end(End from, List<Section.Polygon> given) {
        return EndSizes.of(body, solid, new SizeText(part.unit()), scale.scale(), from, given);
    }

    /** Sections of keyways in a row below everything else, from the left. */
    private void sections() {
        Box above = bounds(views);
        double left = 0;
        int number = 0;
        for (Across feature : body.across()) {
            if (feature instanceof Across.Keyway keyway) {
                Dimensioned section = KeySizes.of(
                        solid, new SizeText(part.unit()), scale.scale(), keyway, TurnedSizes.sectionLetter(number++));
                Box own = section.bounds();
                double x = left - own.left();
                views.add(new Placed(section, x, above.bottom() + BETWEEN - own.top()));
                left = x + own.right() + BETWEEN_SECTIONS;
            }
        }
    }
}
