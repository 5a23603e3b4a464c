package chargehand.drawing.stage;

import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.drawing.view.AxialScale;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/** Draws what holds the work, simply and to scale; what lies left of 0 has a fixed length on paper. */
final class HoldLines {
    /** How much of a chuck's body or a spindle nose is drawn (mm on paper). */
    static final double BODY = 15;

    /** How much of a centre is drawn beyond the work (mm on paper). */
    static final double CENTRE = 18;

    /** Half the width of a clamp over the work (mm on paper). */
    private static final double CLAMP = 4;

    /** How far the chuck's body stands behind work that sits on the steps of its jaws (mm on paper). */
    private static final double JAW_STEP = 4;

    /** How thick a soft sheet between jaws and work is drawn (mm on paper). */
    private static final double SHEET = 1;

    /** How far soft jaws go on behind the work (mm on paper). */
    private static final double SEAT = 5;

    private static final double CONE = Math.tan(Math.toRadians(30));

    private final Held held;
    private final AxialScale scale;
    private final HoldSize size;
    private final Tint tint = new Tint();
    private final double from;
    private final double to;
    private final double work;

    private HoldLines(Held held, AxialScale scale) {
        this.held = held;
        this.scale = scale;
        size = HoldSize.of(held.stage().hold());
        from = scale.x(held.grip().from());
        to = scale.x(held.grip().to());
        work = scale.size(held.grip().diameter().half());
    }

    static List<Mark> of(Held held, AxialScale scale) {
        HoldLines lines = new HoldLines(held, scale);
        lines.hold();
        lines.support();
        return lines.tint.marks();
    }

    private double body() {
        return scale.scale() * size.radius();
    }

    private double jaw() {
        return scale.scale() * size.jaw();
    }

    private void hold() {
        switch (held.stage().hold()) {
            case Hold.Chuck chuck -> chuck(chuck.jaws());
            case Hold.Collet collet -> collet();
            case Hold.DividingHead head -> dividingHead();
            case Hold.Centres centres -> centres();
            case Hold.Mandrel mandrel -> mandrel();
            case Hold.JawsInside jaws -> jawsInside();
            case Hold.StubMandrel stub -> stubMandrel();
            case Hold.Faceplate plate -> faceplate(scale.size(plate.outside().half()));
            case Hold.Vee vee -> vee();
            case Hold.Clamped clamped -> tint.pair(from, to, work, body());
        }
    }

    private void chuck(Hold.Jaws jaws) {
        tint.box(-BODY, -body(), from, body());
        switch (jaws) {
            case HARD -> tint.pair(from, to, work, jaw());
            case PACKED -> {
                tint.pair(from, to, work + SHEET, jaw());
                for (int side : new int[] {-1, 1}) {
                    tint.sheet(new Point(from, side * (work + SHEET / 2)), new Point(to, side * (work + SHEET / 2)));
                }
            }
            case SOFT -> softJaws();
        }
    }

    /** Blocks as deep as the chuck's body, bored to the work over the grip, which leaves a seat behind it. */
    private void softJaws() {
        double seat = Math.max(0.6 * work, work - 3);
        for (int side : new int[] {-1, 1}) {
            tint.shape(List.of(
                    new Point(from - SEAT, side * seat),
                    new Point(from, side * seat),
                    new Point(from, side * work),
                    new Point(to, side * work),
                    new Point(to, side * jaw()),
                    new Point(from - SEAT, side * jaw())));
        }
    }

    private void collet() {
        double nose = Math.min(to, from + BODY / 2);
        tint.box(-BODY, -body(), from, body());
        for (int side : new int[] {-1, 1}) {
            tint.shape(List.of(
                    new Point(from, side * work),
                    new Point(to, side * work),
                    new Point(to, side * jaw()),
                    new Point(nose, side * body()),
                    new Point(from, side * body())));
        }
    }

    /** The chuck, and behind it the head with its base below. */
    private void dividingHead() {
        tint.box(-2 * BODY, -0.7 * body(), -0.8 * BODY, 1.25 * body());
        tint.box(-0.8 * BODY, -body(), from, body());
        tint.pair(from, to, work, jaw());
    }

    private void centres() {
        centre(0, -1);
        tint.box(-CENTRE, -body(), -CENTRE + 5, body());
        tint.pair(from, to, work, body());
        double tail = -CENTRE + 5;
        tint.box(tail, -0.9 * body(), from, -0.9 * body() + 2);
    }

    private void mandrel() {
        double end = scale.x(held.end());
        tint.box(-6, -work, end + 6, work);
        centre(-6, -1);
        centre(end + 6, 1);
    }

    /** Jaws that reach from the chuck into the bore and bear outward on it. */
    private void jawsInside() {
        tint.box(-JAW_STEP - BODY, -body(), -JAW_STEP, body());
        tint.pair(-JAW_STEP, to, 0.45 * work, work);
    }

    /** A slug in the jaws, turned to the bore, its shoulder behind the work. */
    private void stubMandrel() {
        double shoulder = 1.3 * work;
        tint.box(-2 * BODY, -body(), -BODY, body());
        tint.pair(-BODY, -JAW_STEP, shoulder, jaw());
        tint.box(-BODY, -shoulder, 0, shoulder);
        tint.box(0, -work, to, work);
    }

    /** The plate, and on each side a clamp on its heel block, reaching in over the edge of the work. */
    private void faceplate(double outside) {
        double lap = Math.max(2, outside - work);
        tint.box(-BODY / 2, -body() - CLAMP, 0, body() + CLAMP);
        tint.pair(to, to + CLAMP, outside - lap, body());
        tint.pair(0, to, body() - CLAMP, body());
    }

    private void vee() {
        double base = work + 14;
        tint.box(from, 0.35 * work, to, base);
        tint.line(new Point(from, work), new Point(to, work));
        double clamp = clampAt();
        tint.box(clamp - CLAMP, -work - 6, clamp + CLAMP, -work);
    }

    /** Where a clamp over the work stands clearest of what is cut from above. */
    private double clampAt() {
        return Stream.of(0.5, 0.2, 0.8)
                .map(part -> from + part * (to - from))
                .max(Comparator.comparingDouble(x -> Math.min(3 * CLAMP, clear(x))))
                .orElseThrow();
    }

    private double clear(double x) {
        return held.stage().surfaces().stream()
                .filter(Surface.Feature.class::isInstance)
                .mapToDouble(surface -> Math.abs(scale.x(held.bed().along(((Surface.Feature) surface).at())) - x))
                .min()
                .orElse(Double.MAX_VALUE);
    }

    private void support() {
        double end = scale.x(held.solid().length());
        switch (held.support()) {
            case Hold.Support.None none -> {}
            case Hold.Support.Centre centre -> {
                if (!(held.stage().hold() instanceof Hold.Mandrel)) {
                    centre(end, 1);
                }
            }
            case Hold.Support.FixedSteady(var at, var diameter) ->
                steady(scale.x(held.bed().along(at)), scale.size(diameter.half()));
            case Hold.Support.TravellingSteady travelling -> {
                centre(end, 1);
                double near = scale.size(held.radius());
                tint.box(end - 14, -near - 9, end - 7, -near);
            }
        }
    }

    /** Two fingers and a piece of the ring that carries them. */
    private void steady(double x, double radius) {
        double ring = Math.max(radius + 9, body());
        tint.pair(x - 2.5, x + 2.5, radius, ring);
        tint.pair(x - 4, x + 4, ring, ring + 4);
    }

    /** A 60° centre whose point is a little within the work. */
    private void centre(double face, int out) {
        double half = Math.min(6, Math.max(2.5, 0.8 * scale.size(held.radius())));
        double depth = Math.min(2.5, half / CONE / 2);
        double shoulder = face + out * (half / CONE - depth);
        double back = face + out * Math.max(CENTRE, half / CONE + 4);
        tint.shape(List.of(
                new Point(face - out * depth, 0),
                new Point(shoulder, -half),
                new Point(back, -half),
                new Point(back, half),
                new Point(shoulder, half)));
    }
}
