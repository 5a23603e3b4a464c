package chargehand.part.check;

import chargehand.part.Across;
import chargehand.part.Bore;
import chargehand.part.FlatDepth;
import chargehand.part.Hole;
import chargehand.part.InBore;
import chargehand.part.OnEnd;

/** The keys under which the features of a part are written down. */
final class Paths {
    private Paths() {}

    static String section(int index) {
        return "outside[" + (index + 1) + "]";
    }

    static String bore(int index) {
        return "inside[" + (index + 1) + "]";
    }

    static String across(int index) {
        return "across[" + (index + 1) + "]";
    }

    static String inBore(int index) {
        return "in-bores[" + (index + 1) + "]";
    }

    static String onEnd(int index) {
        return "on-ends[" + (index + 1) + "]";
    }

    static String hole(int index) {
        return "holes[" + (index + 1) + "]";
    }

    static String cut(int index) {
        return "cuts[" + (index + 1) + "]";
    }

    static String tie(int index) {
        return "ties[" + (index + 1) + "]";
    }

    static String issue(int index) {
        return "issues[" + (index + 1) + "]";
    }

    static String length(int index) {
        return "lengths[" + (index + 1) + "]";
    }

    static String key(Bore bore) {
        return switch (bore) {
            case Bore.Drilled drilled -> "drill";
            case Bore.Bored bored -> "bore";
            case Bore.Reamed reamed -> "ream";
            case Bore.Counterbored counterbored -> "counterbore";
            case Bore.Tapped tapped -> "tap";
            case Bore.Coned coned -> "cone";
        };
    }

    static String key(Across across) {
        return switch (across) {
            case Across.CrossHole hole -> "hole";
            case Across.Keyway keyway -> "keyway";
            case Across.TaperPin pin -> "taper-pin";
            case Across.Slit slit -> "slit";
            case Across.Flat flat -> flat.depth() instanceof FlatDepth.Below ? "flat" : "over-flat";
        };
    }

    static String key(InBore feature) {
        return switch (feature) {
            case InBore.Keyway keyway -> "keyway";
            case InBore.OilGroove groove -> "oil-groove";
            case InBore.Recess recess -> "recess";
        };
    }

    static String key(OnEnd feature) {
        return switch (feature) {
            case OnEnd.Drilled drilled -> "holes";
            case OnEnd.Tapped tapped -> "tapped-holes";
            case OnEnd.Slot slot -> "slot";
            case OnEnd.Centre centre -> "centre";
        };
    }

    static String key(Hole hole) {
        return switch (hole) {
            case Hole.Drilled drilled -> "drill";
            case Hole.Reamed reamed -> "ream";
            case Hole.Tapped tapped -> "tap";
            case Hole.Counterbored bored -> "counterbore";
        };
    }
}
