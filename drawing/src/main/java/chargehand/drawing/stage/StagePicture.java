package chargehand.drawing.stage;

import chargehand.drawing.dimension.Annotations;
import chargehand.drawing.dimension.AxialDimension;
import chargehand.drawing.dimension.Dimensioned;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.LineStyle;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Path;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.AxialScale;
import chargehand.drawing.view.Reach;
import chargehand.drawing.view.Side;
import chargehand.drawing.view.SideView;
import chargehand.drawing.view.View;
import chargehand.measure.Length;
import chargehand.part.shape.Profile;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/** Draws turned work in its holding, headstock at the left, on a picture of its own size. */
public final class StagePicture {
    private static final double MARGIN = 3;

    private final Held held;
    private final AxialScale scale;
    private final SurfaceLines surfaces;

    private StagePicture(Held held, AxialScale scale) {
        this.held = held;
        this.scale = scale;
        surfaces = new SurfaceLines(held, scale);
    }

    /**
     * The picture of a stage.
     *
     * @param width about how wide it should be (mm); words that need it make it a little wider
     * @param height about how high it should be (mm)
     */
    public static Picture of(Stage stage, double width, double height) {
        Held held = Held.of(stage);
        Dimensioned drawn = new StagePicture(held, StageScale.of(held, width, height)).drawn(width);
        List<Mark> marks = drawn.marks();
        Box bounds = Box.of(marks).grown(MARGIN);
        return new Picture(
                bounds.width(),
                bounds.height(),
                stage.title(),
                marks.stream()
                        .map(mark -> mark.moved(-bounds.left(), -bounds.top()))
                        .toList());
    }

    private Dimensioned drawn(double width) {
        List<Mark> marks = new ArrayList<>();
        List<Mark> holding = HoldLines.of(held, scale);
        List<Mark> work = SideView.of(held.look(scale)).marks();
        List<Mark> ground = ground();
        boolean within = bearsInside(held.stage().hold());
        marks.addAll(within ? holding : List.of());
        marks.addAll(ground);
        marks.addAll(stock());
        marks.addAll(work);
        marks.addAll(within ? List.of() : holding);
        marks.addAll(surfaces.marks());
        marks.addAll(SideView.breaks(held.look(scale)));
        View view = View.of(marks);
        double length = scale.x(held.end());
        double margin = Math.max(20, (width - length) / 2);
        Annotations annotations = new Annotations(view, new Box(-margin, -1_000, length + margin, 1_000));
        sizes(annotations);
        for (Surface surface : held.stage().surfaces()) {
            if (!surface.label().isBlank()) {
                annotations.callout(surfaces.tips(surface), outline(), Wording.of(surface.label()), Ink.MARKING);
            }
        }
        return annotations.placed();
    }

    /** What bears in the bore is seen only where the work is cut away before it. */
    private static boolean bearsInside(Hold hold) {
        return switch (hold) {
            case Hold.Mandrel mandrel -> true;
            case Hold.StubMandrel stub -> true;
            case Hold.JawsInside jaws -> true;
            case Hold.Chuck chuck -> false;
            case Hold.Collet collet -> false;
            case Hold.Centres centres -> false;
            case Hold.DividingHead head -> false;
            case Hold.Faceplate plate -> false;
            case Hold.Vee vee -> false;
            case Hold.Clamped clamped -> false;
        };
    }

    /** Clear paper where there is work, so that it stands out from a page's ground and from a mandrel in its bore. */
    private List<Mark> ground() {
        List<Point> outside = points(held.solid().outer());
        List<Point> inside = points(held.solid().inner());
        List<Point> above = new ArrayList<>(outside);
        above.add(scale.onAxis(held.solid().length()));
        above.add(scale.onAxis(held.solid().outer().start()));
        List<Point> below = new ArrayList<>(outside);
        below.addAll(inside.reversed());
        return List.of(
                new Mark.Fill(Ink.PAPER, Path.round(above)), new Mark.Fill(Ink.PAPER, Path.round(mirrored(below))));
    }

    private List<Point> points(Profile profile) {
        return profile.stations().stream()
                .map(station -> scale.above(station.at(), station.radius()))
                .toList();
    }

    private static List<Point> mirrored(List<Point> points) {
        return points.stream().map(point -> new Point(point.x(), -point.y())).toList();
    }

    private List<Mark> stock() {
        List<Point> above = new ArrayList<>();
        above.add(scale.onAxis(held.stock().start()));
        above.addAll(points(held.stock()));
        above.add(scale.onAxis(held.stock().end()));
        return List.of(
                new Mark.Stroke(LineStyle.DOUBLE_CHAIN, Ink.INK, Path.through(above)),
                new Mark.Stroke(LineStyle.DOUBLE_CHAIN, Ink.INK, Path.through(mirrored(above))));
    }

    /** How far work and jaws reach from the axis, the chuck's body left out (mm on paper). */
    private double outline() {
        HoldSize size = HoldSize.of(held.stage().hold());
        return Math.max(scale.size(held.radius()), scale.scale() * size.jaw());
    }

    /** The first size stands above, the others below. */
    private void sizes(Annotations annotations) {
        List<AxialDimension> all = held.stage().settings().stream()
                .map(size -> new AxialDimension(
                        held.bed().first(size.from(), size.to()),
                        held.bed().last(size.from(), size.to()),
                        Wording.of(size.text())))
                .toList();
        if (!all.isEmpty()) {
            annotations.lengths(all.subList(0, 1), scale, Side.ABOVE, outline(), reach(Side.ABOVE));
            annotations.lengths(all.subList(1, all.size()), scale, Side.BELOW, outline(), reach(Side.BELOW));
        }
    }

    private ToDoubleFunction<Length> reach(Side side) {
        Reach reach = new Reach(held.look(scale));
        double jaw = scale.scale() * HoldSize.of(held.stage().hold()).jaw();
        Length jaws = held.grip().to();
        return at -> {
            if (at.equals(jaws)) {
                return jaw;
            }
            boolean onWork = !at.isLessThan(held.solid().outer().start())
                    && !at.isMoreThan(held.solid().length());
            return onWork ? reach.outside(side, at) : scale.size(held.radius());
        };
    }
}
