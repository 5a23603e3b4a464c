package chargehand.method.work;

import chargehand.measure.Length;
import chargehand.method.plan.Blank;

/** Plain questions about a raw blank along an axis. */
public final class Blanks {
    private Blanks() {}

    /** Where the blank begins along the axis. */
    public static Length from(Blank blank) {
        return switch (blank) {
            case Blank.RoundBar bar -> bar.from();
            case Blank.PolygonBar bar -> bar.from();
            case Blank.OldPart old -> Length.ZERO;
            case Blank.Slab slab -> Length.ZERO;
        };
    }

    /** Where the blank ends along the axis. */
    public static Length to(Blank blank) {
        return switch (blank) {
            case Blank.RoundBar bar -> bar.to();
            case Blank.PolygonBar bar -> bar.to();
            case Blank.OldPart old -> old.length();
            case Blank.Slab slab -> slab.length();
        };
    }

    /** The diameter over the blank's corners. */
    public static Length swing(Blank blank) {
        return switch (blank) {
            case Blank.RoundBar bar -> bar.diameter();
            case Blank.OldPart old -> old.largest();
            case Blank.PolygonBar bar -> bar.flats().times(1 / Math.cos(Math.PI / bar.sides()));
            case Blank.Slab slab ->
                Length.mm(Math.hypot(slab.width().mm(), slab.thickness().mm()));
        };
    }

    /** What jaws close on: the diameter of round bar, the flats of other bar. */
    public static Length gripped(Blank blank) {
        return switch (blank) {
            case Blank.RoundBar bar -> bar.diameter();
            case Blank.OldPart old -> old.largest();
            case Blank.PolygonBar bar -> bar.flats();
            case Blank.Slab slab -> slab.width();
        };
    }

    /** How many sides jaws find; 0 for round. */
    public static int sides(Blank blank) {
        return switch (blank) {
            case Blank.RoundBar bar -> 0;
            case Blank.OldPart old -> 0;
            case Blank.PolygonBar bar -> bar.sides();
            case Blank.Slab slab -> 4;
        };
    }

    /** Whether the blank is the end of a longer bar. */
    public static boolean isOnBar(Blank blank) {
        return switch (blank) {
            case Blank.RoundBar bar -> bar.onBar();
            case Blank.PolygonBar bar -> bar.onBar();
            case Blank.OldPart old -> false;
            case Blank.Slab slab -> false;
        };
    }
}
