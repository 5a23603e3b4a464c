package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Inscription;
import chargehand.drawing.sign.Local;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.EndView;
import chargehand.drawing.view.Look;
import chargehand.drawing.view.Side;
import chargehand.drawing.view.View;
import chargehand.measure.Length;
import chargehand.part.End;
import chargehand.part.Section;
import chargehand.part.shape.Solid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** An end view with the sizes over flats below it. */
public final class EndSizes {
    private static final double TITLE = 3.5;

    /** How much less than sharp corners must be before their diameter is given, as a part of it. */
    private static final double BLUNT = 0.995;

    private EndSizes() {}

    /**
     * The end view of a part from one end with the sizes of the polygons that are given there, and of what is not turned.
     *
     * @param look the part as its side view shows it
     * @param given which polygons
     */
    public static Dimensioned of(Look look, SizeText text, End from, List<Section.Polygon> given) {
        View view = EndView.of(look, from);
        List<Placing> polygons = placed(look.solid(), text, look.scale().scale(), given);
        return new Dimensioned(view, new EndCallouts(look, from).placed(view, text, polygons), notes(given, text));
    }

    /** The same view to stand away from its place, with words that say from where it is seen. */
    public static Dimensioned away(Look look, SizeText text, End from, List<Section.Polygon> given) {
        Dimensioned there = of(look, text, from, given);
        List<Placing> placed = new ArrayList<>(there.placed());
        Inscription title = new Inscription(Wording.of("seen from end " + from.name()), TITLE);
        double top = there.bounds().top();
        placed.add(Placing.pen()
                .label(title, Local.at(new Point(-title.width() / 2, top - TITLE)))
                .at(0));
        return new Dimensioned(there.view(), placed, there.notes());
    }

    private static List<Placing> placed(Solid solid, SizeText text, double scale, List<Section.Polygon> given) {
        double outline = scale * solid.outer().most(Length.ZERO, solid.length()).mm();
        List<Placing> placed = new ArrayList<>();
        Map<Double, Double> ends = new HashMap<>();
        List<Span> spans = new ArrayList<>();
        for (Section.Polygon polygon : given) {
            if (polygon.sides() % 2 == 0) {
                double flat = scale * polygon.flats().length().mm() / 2;
                ends.put(flat, flatEnd(polygon, scale));
                spans.add(new Span(-flat, flat, overFlats(polygon, text)));
            }
        }
        LengthStack stack =
                new LengthStack(Rail.level(Side.BELOW), outline, x -> ends.getOrDefault(Math.abs(x), outline));
        placed.addAll(stack.draw(spans, List.of()));
        given.stream()
                .filter(EndSizes::isBlunt)
                .forEach(polygon -> placed.add(overCorners(polygon, text, scale, outline)));
        return placed;
    }

    /** How far from the middle of a flat its end lies (mm). */
    private static double flatEnd(Section.Polygon polygon, double scale) {
        double flat = scale * polygon.flats().length().mm() / 2;
        double corner = scale * polygon.corners().mm() / 2;
        double sharp = flat * Math.tan(Math.PI / polygon.sides());
        return Math.min(sharp, Math.sqrt(Math.max(0, corner * corner - flat * flat)));
    }

    private static Wording overFlats(Section.Polygon polygon, SizeText text) {
        Wording size = text.size(polygon.flats());
        return polygon.sides() == 4 ? Wording.of(Wording.SQUARE).then(size) : size.then(Wording.of(" A/F"));
    }

    private static boolean isBlunt(Section.Polygon polygon) {
        double sharp = polygon.flats().length().mm() / Math.cos(Math.PI / polygon.sides());
        return polygon.corners().mm() < BLUNT * sharp;
    }

    private static Placing overCorners(Section.Polygon polygon, SizeText text, double scale, double outline) {
        double radius = scale * polygon.corners().mm() / 2;
        double angle = polygon.sides() % 4 == 0 ? 90 - 180.0 / polygon.sides() : 90 - 360.0 / polygon.sides();
        Point tip = new Point(0, 0).towards(angle, radius);
        Wording wording = Wording.size(Wording.DIAMETER + text.figures(polygon.corners()));
        return new LeaderWays(Subject.inscription(wording), 0)
                .past(List.of(tip), true, -outline)
                .getFirst();
    }

    private static List<String> notes(List<Section.Polygon> given, SizeText text) {
        return given.stream()
                .filter(polygon -> polygon.sides() % 2 == 1)
                .map(polygon -> "%s: %s flats evenly round, each %s from the axis."
                        .formatted(
                                polygon.name(),
                                polygon.sides(),
                                text.figures(polygon.flats().length().half())))
                .toList();
    }
}
