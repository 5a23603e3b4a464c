package chargehand.drawing.sheet;

import chargehand.drawing.dimension.DetailSizes;
import chargehand.drawing.dimension.Dimensioned;
import chargehand.drawing.dimension.EndCallouts;
import chargehand.drawing.dimension.EndSizes;
import chargehand.drawing.dimension.GearTable;
import chargehand.drawing.dimension.KeySizes;
import chargehand.drawing.dimension.SizeText;
import chargehand.drawing.dimension.SmallGrooves;
import chargehand.drawing.dimension.TurnedSizes;
import chargehand.drawing.picture.Box;
import chargehand.drawing.view.AxialScale;
import chargehand.drawing.view.CutChoice;
import chargehand.drawing.view.EndView;
import chargehand.drawing.view.Look;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.Part;
import chargehand.part.Section;
import chargehand.part.shape.Solid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;

/**
 * The views of a turned part at one scale with their sizes, laid out in the projection of its drawing: in first angle the
 * view from the left stands at the right and the view from the right at the left, in third angle each on its own side; or
 * in a row below with the sections of keyways.
 */
final class Layout {
    private static final double BETWEEN = 12;
    private static final double BETWEEN_IN_ROW = 18;

    private final Part part;
    private final Body.Turned body;
    private final Solid solid;
    private final AxialScale scale;
    private final List<DrawnView> views = new ArrayList<>();

    /** Where end views stand. */
    enum Ends {
        /** In their place in the projection of the drawing. */
        BESIDE,
        /** In a row below, with words that say from where they are seen. */
        BELOW
    }

    private Layout(Part part, Body.Turned body, AxialScale scale) {
        this.part = part;
        this.body = body;
        this.solid = Solid.of(body);
        this.scale = scale;
    }

    /** Lays out a part, keeping sizes within a width where they can be (mm). */
    static List<DrawnView> of(Part part, Body.Turned body, AxialScale scale, Ends ends, double width) {
        Layout layout = new Layout(part, body, scale);
        layout.lay(ends, width);
        return layout.views;
    }

    static Box bounds(List<DrawnView> views) {
        return views.stream().map(DrawnView::bounds).reduce(Box::with).orElseThrow();
    }

    /** Whether a part may have something that only an end view gives. */
    static boolean needsEndViews(Body.Turned body) {
        return body.outside().stream().anyMatch(Section.Polygon.class::isInstance)
                || body.across().stream().anyMatch(Across.Slit.class::isInstance)
                || !body.inBores().isEmpty()
                || !body.onEnds().isEmpty();
    }

    private void lay(Ends place, double width) {
        List<EndSeen> ends = ends();
        double taken = place == Ends.BELOW
                ? 0
                : ends.stream()
                        .mapToDouble(end -> beside(end).bounds().width() + BETWEEN)
                        .sum();
        Dimensioned main = main(width - taken);
        views.add(new DrawnView(main, DrawnView.Shows.SIDE, scale, 0, 0));
        List<DrawnView> below = new ArrayList<>();
        for (EndSeen end : ends) {
            switch (place) {
                case BESIDE -> views.add(beside(main.bounds(), end));
                case BELOW -> below.add(away(end));
            }
        }
        below.addAll(sections());
        enlarged().forEach(one -> below.add(detail(one)));
        GearTable.of(body, part.unit())
                .forEach(table -> below.add(new DrawnView(table, DrawnView.Shows.TABLE, plain(), 0, 0)));
        row(below);
    }

    private Dimensioned main(double width) {
        double length = scale.x(body.length());
        double margin = Math.max(0, (width - length) / 2);
        Box limits = new Box(-margin, -10_000, length + margin, 10_000);
        return TurnedSizes.of(part, body, look(), limits, enlarged());
    }

    private List<SmallGrooves.Enlarged> enlarged() {
        return SmallGrooves.of(
                body,
                look(),
                Arrays.stream(DrawingScale.values()).map(DrawingScale::factor).toList());
    }

    private DrawnView detail(SmallGrooves.Enlarged enlarged) {
        double larger = enlarged.detail().scale();
        String scaleText = Arrays.stream(DrawingScale.values())
                .filter(one -> one.factor() == larger)
                .findFirst()
                .orElseThrow()
                .text();
        Dimensioned view = DetailSizes.of(body, text(), enlarged, scaleText);
        return new DrawnView(view, DrawnView.Shows.DETAIL, AxialScale.of(larger), 0, 0);
    }

    private Look look() {
        return Look.of(body, scale, CutChoice.of(body));
    }

    private DrawnView beside(Box main, EndSeen end) {
        Dimensioned view = beside(end);
        Box own = view.bounds();
        double x = standsRight(end.from) ? main.right() + BETWEEN - own.left() : main.left() - BETWEEN - own.right();
        return new DrawnView(view, DrawnView.Shows.END, plain(), x, 0);
    }

    /** Whether what is seen from an end stands at the right: end A lies at the left. */
    private boolean standsRight(End from) {
        return switch (part.drafting().projection()) {
            case FIRST_ANGLE -> from == End.A;
            case THIRD_ANGLE -> from == End.B;
        };
    }

    private DrawnView away(EndSeen end) {
        Dimensioned view = EndSizes.away(look(), text(), end.from, end.given);
        return new DrawnView(view, DrawnView.Shows.END, plain(), 0, 0);
    }

    /** The scale of views that nothing is left out of. */
    private AxialScale plain() {
        return AxialScale.of(scale.scale());
    }

    private Dimensioned beside(EndSeen end) {
        return EndSizes.of(look(), text(), end.from, end.given);
    }

    private SizeText text() {
        return new SizeText(part.unit());
    }

    /** An end view, and which polygons it gives. */
    private record EndSeen(End from, List<Section.Polygon> given) {}

    /** The end views that polygons, keyways of bores and holes on circles need. */
    private List<EndSeen> ends() {
        List<Section.Polygon> fromA = new ArrayList<>();
        List<Section.Polygon> fromB = new ArrayList<>();
        for (Solid.FlatsPlace place : solid.flats()) {
            boolean left = EndView.shows(solid, place, End.A) || !EndView.shows(solid, place, End.B);
            (left ? fromA : fromB).add(polygon(place.name()));
        }
        return Stream.of(new EndSeen(End.A, fromA), new EndSeen(End.B, fromB))
                .filter(end -> !end.given.isEmpty() || new EndCallouts(look(), end.from).any())
                .toList();
    }

    private Section.Polygon polygon(String name) {
        return body.outside().stream()
                .filter(Section.Polygon.class::isInstance)
                .map(Section.Polygon.class::cast)
                .filter(polygon -> polygon.name().equals(name))
                .findFirst()
                .orElseThrow();
    }

    private List<DrawnView> sections() {
        List<DrawnView> sections = new ArrayList<>();
        for (Across feature : body.across()) {
            if (feature instanceof Across.Keyway keyway) {
                String letter = TurnedSizes.sectionLetter(sections.size());
                Dimensioned view = KeySizes.of(solid, text(), scale.scale(), keyway, letter);
                sections.add(new DrawnView(view, DrawnView.Shows.SECTION, plain(), 0, 0));
            }
        }
        return sections;
    }

    /** Further views in a row below everything else, from the left. */
    private void row(List<DrawnView> below) {
        double bottom = bounds(views).bottom();
        double left = 0;
        for (DrawnView view : below) {
            Box own = view.bounds();
            double x = left - own.left();
            views.add(view.moved(x, bottom + BETWEEN - own.top()));
            left = x + own.right() + BETWEEN_IN_ROW;
        }
    }
}
