package chargehand.drawing.view;

import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Depth;
import chargehand.part.InBore;
import chargehand.part.OnEnd;
import chargehand.part.shape.Solid;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a feature across lies round the axis as it is looked at.
 *
 * @param degrees from up, over the side towards the viewer: 0 up, 90 towards the viewer, 180 down, 270 away
 */
public record Bearing(double degrees) {
    private static final double NEAR = 0.5;

    public Bearing {
        degrees = ((degrees % 360) + 360) % 360;
    }

    /**
     * How far the part is turned before it is looked at, so that its features across show best: a bearing to add to each
     * feature's own angle. On a part seen from outside they should face the viewer, otherwise lie in the cut half.
     */
    static Bearing turn(Look look) {
        List<Across> across = look.solid().across();
        List<InBore> grooves = BoreGroove.grooves(look);
        Bearing best = new Bearing(0);
        int most = -1;
        List<OnEnd.Slot> slots = EndSlotLines.slots(look);
        for (double around : angles(across, grooves, slots)) {
            for (double wanted : look.cut() == Cut.NONE ? new double[] {90, 180} : new double[] {180, 90}) {
                Bearing turn = new Bearing(wanted - around);
                int shown = across.stream()
                                .mapToInt(other -> of(other, turn).shown(other, faces(other, look.solid(), look.cut())))
                                .sum()
                        + grooves.stream()
                                .mapToInt(other -> of(other, turn).shown(look.cut()))
                                .sum()
                        + slots.stream()
                                .mapToInt(slot ->
                                        new Bearing(slot.around().degrees() + turn.degrees).shownAcross(look.cut()))
                                .sum();
                if (shown > most) {
                    most = shown;
                    best = turn;
                }
            }
        }
        return best;
    }

    private static List<Double> angles(List<Across> across, List<InBore> grooves, List<OnEnd.Slot> slots) {
        List<Double> angles = new ArrayList<>();
        across.forEach(feature -> angles.add(feature.around().degrees()));
        grooves.forEach(groove -> angles.add(BoreGroove.around(groove)));
        slots.forEach(slot -> angles.add(slot.around().degrees()));
        return angles;
    }

    /** How far a part is turned for a feature to lie on top. */
    public static Bearing up(Across feature) {
        return new Bearing(-feature.around().degrees());
    }

    /** The bearing of a feature on a part turned so far. */
    public static Bearing of(Across feature, Bearing turn) {
        return new Bearing(feature.around().degrees() + turn.degrees);
    }

    /** The bearing of a groove along a bore on a part turned so far. */
    public static Bearing of(InBore groove, Bearing turn) {
        return new Bearing(BoreGroove.around(groove) + turn.degrees);
    }

    /** Whether a feature shows best where it faces the viewer, the material round it not being cut. */
    private static boolean faces(Across feature, Solid solid, Cut cut) {
        return switch (cut) {
            case NONE -> true;
            case LOCAL -> !(feature instanceof Across.CrossHole hole && meetsBore(hole, solid));
            case HALF, FULL -> false;
        };
    }

    private static boolean meetsBore(Across.CrossHole hole, Solid solid) {
        Length at = hole.at().length();
        return solid.innerAtMost().most(at, at).isPositive();
    }

    /** How well a feature shows: 3 best, 0 not at all. */
    private int shown(Across feature, boolean facing) {
        boolean through = isThrough(feature);
        if (facing) {
            return isTowards() || (isAway() && through) ? 3 : isUp() || isDown() ? 2 : 1;
        }
        return isDown() || (isUp() && through) ? 3 : isTowards() || (isAway() && through) ? 2 : 0;
    }

    /** How well a groove along a bore shows. */
    private int shown(Cut cut) {
        return isDown() || (isUp() && cut == Cut.FULL) ? 3 : isAway() ? 2 : 0;
    }

    /** Whether a feature comes out at the other side. */
    private static boolean isThrough(Across feature) {
        return switch (feature) {
            case Across.CrossHole hole -> hole.depth() instanceof Depth.Through;
            case Across.TaperPin pin -> true;
            case Across.Slit slit -> slit.walls() == Across.Walls.BOTH;
            case Across.Keyway keyway -> false;
            case Across.Flat flat -> false;
        };
    }

    /** How well a slot across an end shows that runs this way. */
    private int shownAcross(Cut cut) {
        boolean facing = cut == Cut.NONE || cut == Cut.LOCAL;
        boolean square = facing ? isTowards() || isAway() : isUp() || isDown();
        return square ? 3 : 1;
    }

    public boolean isUp() {
        return is(0) || is(360);
    }

    public boolean isDown() {
        return is(180);
    }

    public boolean isTowards() {
        return is(90);
    }

    public boolean isAway() {
        return is(270);
    }

    private boolean is(double other) {
        return Math.abs(degrees - other) < NEAR;
    }

    /** How far outward points up (1 up, -1 down). */
    public double up() {
        return Math.cos(Math.toRadians(degrees));
    }

    /** How far outward points towards the viewer. */
    public double towards() {
        return Math.sin(Math.toRadians(degrees));
    }

    public Bearing opposite() {
        return new Bearing(degrees + 180);
    }
}
