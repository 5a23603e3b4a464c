package chargehand.method.holding;

import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.plan.Holding;
import chargehand.method.task.Task;
import chargehand.method.work.Standing;
import chargehand.part.Body;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.trade.holding.ThinRing;
import chargehand.trade.material.Material;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Step;
import chargehand.trade.sum.Working;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What walls stand the jaws of a chuck. A hollow place that is pressed by jaws goes out of round, and what is turned or bored
 * in it meanwhile is lobed when they let go. The push is what holds a light cut twice over, since a turner who minds the wall
 * tightens no more; the wall is that of the finished part.
 */
final class Walls {
    /** A wall thinner than this share of its diameter is nipped by hard jaws whatever is cut (common practice). */
    private static final double LEAST_FOR_HARD_JAWS = 1.0 / 16;

    /** Half the angle that a soft jaw bears on, bored to the work (radians): three of them leave gaps of 20°. */
    private static final double SOFT_HALF_WIDTH = Math.toRadians(50);

    /** A split bush leaves only its slit open; three jaws on it press through its wall (radians). */
    private static final double BUSH_HALF_WIDTH = Math.toRadians(55);

    /** A light cut on thin work. */
    private static final Length LIGHT_FEED = Length.mm(0.1);

    private static final Length LIGHT_DEPTH = Length.mm(0.5);

    /** The force on each square millimetre of chip where nobody has published one for the metal (N/mm²). */
    static final double MIDDLING_FORCE = 2500;

    /** Friction of dry metal on jaws. */
    private static final double FRICTION = 0.2;

    private static final double IN_HAND = 2;

    /** Less than this no shop measures. */
    private static final Length WORTH_TELLING = Length.mm(0.001);

    private final Profile inner;
    private final Profile outer;
    private final Material material;
    private final Bending bending;

    Walls(Body.Turned body, Material material) {
        Solid solid = Solid.of(body);
        this.inner = solid.inner();
        this.outer = solid.outer();
        this.material = material;
        this.bending = new Bending(material);
    }

    /** How the work bends before its walls give. */
    Bending bending() {
        return bending;
    }

    /** The hollow of the finished part. */
    Profile hollow() {
        return inner;
    }

    /** Whether a wall is too thin for hard jaws to close on or open in. */
    boolean isNipped(Standing work, Holding.Grip grip, Holding.Bearing bearing) {
        boolean hollow =
                work.tasks().list().stream().anyMatch(task -> task instanceof Task.Inside && work.isDone(task));
        return hollow && isThin(grip, bearing);
    }

    /** Whether hard jaws would nip the wall once it is bored. */
    boolean isThin(Holding.Grip grip, Holding.Bearing bearing) {
        return isHard(bearing)
                && wall(grip, bearing)
                        .filter(wall -> wall.over(grip.diameter()) < LEAST_FOR_HARD_JAWS)
                        .isPresent();
    }

    private static boolean isHard(Holding.Bearing bearing) {
        return switch (bearing) {
            case Holding.Bearing.Closing closing -> true;
            case Holding.Bearing.Opening opening -> true;
            case Holding.Bearing.SoftJaws soft -> false;
            case Holding.Bearing.SplitBush bush -> false;
        };
    }

    /** How far work goes out of round, pressed as hard as a light cut asks. */
    Length outOfRound(Holding.Grip grip, Holding.Bearing bearing, int jaws) {
        return wall(grip, bearing)
                .map(wall -> ring(grip, bearing, wall).outOfRound(jaws, push(jaws), halfWidth(bearing)))
                .orElse(Length.ZERO);
    }

    /** The push of each jaw that holds a light cut at the diameter gripped, twice over. */
    Force push(int jaws) {
        double force = specificForce() * LIGHT_FEED.mm() * LIGHT_DEPTH.mm();
        return Force.newtons(IN_HAND * force / (FRICTION * jaws));
    }

    /** The push and what it does, for whoever asks; nothing where nothing gives. */
    List<Step> working(Holding.InChuck held, LengthUnit unit) {
        Length outOfRound = outOfRound(held.grip(), held.bearing(), held.jaws());
        if (outOfRound.isLessThan(WORTH_TELLING)) {
            return List.of();
        }
        var working = new Working();
        working.step(
                "Push of each jaw that holds a light cut twice over: tighten no more",
                "F = 2 kc a f / (μ n)",
                String.format(
                        Locale.ROOT,
                        "2 × %.0f N/mm² × %.1f mm × %.1f mm / (%.1f × %d)",
                        specificForce(),
                        LIGHT_DEPTH.mm(),
                        LIGHT_FEED.mm(),
                        FRICTION,
                        held.jaws()),
                String.format(Locale.ROOT, "%.0f N", push(held.jaws()).newtons()),
                Source.COMMON_PRACTICE);
        working.step(
                "Out of round under that push, as a thin ring",
                "Σ p r⁴ / (E I (m² − 1)²)",
                "wall "
                        + wall(held.grip(), held.bearing())
                                .map(wall -> LengthText.in(wall, unit))
                                .orElse("none"),
                LengthText.both(outOfRound, unit),
                ThinRing.SOURCE);
        return working.steps();
    }

    private double specificForce() {
        return material.kienzle()
                .map(law -> law.specificForce(LIGHT_FEED).megapascals())
                .orElse(MIDDLING_FORCE);
    }

    private ThinRing ring(Holding.Grip grip, Holding.Bearing bearing, Length wall) {
        Length mean = isOpening(bearing)
                ? grip.diameter().plus(wall).half()
                : grip.diameter().minus(wall).half();
        return new ThinRing(mean, wall, grip.length(), material.physical().elasticModulus());
    }

    /** The thinnest wall of the finished part under the jaws; nothing where it is solid. */
    private Optional<Length> wall(Holding.Grip grip, Holding.Bearing bearing) {
        Length from = Length.most(grip.from(), inner.start());
        Length to = Length.least(grip.to(), inner.end());
        if (!from.isLessThan(to)) {
            return Optional.empty();
        }
        Length radius = grip.diameter().half();
        Length wall = isOpening(bearing) ? outer.least(from, to).minus(radius) : radius.minus(inner.most(from, to));
        boolean hollow = inner.most(from, to).isPositive() && wall.isPositive();
        return hollow ? Optional.of(wall) : Optional.empty();
    }

    private static boolean isOpening(Holding.Bearing bearing) {
        return bearing instanceof Holding.Bearing.Opening;
    }

    private static double halfWidth(Holding.Bearing bearing) {
        return switch (bearing) {
            case Holding.Bearing.Closing closing -> 0;
            case Holding.Bearing.Opening opening -> 0;
            case Holding.Bearing.SoftJaws soft -> SOFT_HALF_WIDTH;
            case Holding.Bearing.SplitBush bush -> BUSH_HALF_WIDTH;
        };
    }
}
