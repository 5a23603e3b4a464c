package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.Hole;
import chargehand.part.check.SizeCheck.Kind;
import chargehand.part.shape.DrillPoint;
import chargehand.part.shape.ToolRoom;
import java.util.List;

/** Judges a block and its holes. */
final class BlockCheck {
    private final Body.Block block;
    private final Findings findings;

    BlockCheck(Body.Block block, Findings findings) {
        this.block = block;
        this.findings = findings;
    }

    void judge(FeatureCheck features) {
        SizeCheck sizes = features.sizes();
        sizes.judge("block.length", block.length(), Kind.EITHER);
        sizes.judge("block.width", block.width(), Kind.EITHER);
        sizes.judge("block.thickness", block.thickness(), Kind.EITHER);
        List<Hole> holes = block.holes();
        for (int i = 0; i < holes.size(); i++) {
            features.hole(Paths.hole(i), holes.get(i));
        }
        for (int i = 0; i < block.cuts().size(); i++) {
            features.cut(Paths.cut(i), block.cuts().get(i));
        }
        if (findings.isSound()) {
            judgeTogether();
        }
    }

    /** Judges one hole by itself. */
    static void judge(String path, Hole hole, SizeCheck sizes) {
        String key = path + "." + Paths.key(hole);
        switch (hole) {
            case Hole.Drilled drilled -> sizes.judge(key, drilled.diameter(), Kind.HOLE);
            case Hole.Reamed reamed -> sizes.judge(key, reamed.diameter(), Kind.HOLE);
            case Hole.Tapped tapped -> sizes.judge(key, tapped.thread().major());
            case Hole.Counterbored bored -> {
                sizes.judge(key, bored.diameter(), Kind.HOLE);
                sizes.judge(path + ".head", bored.head(), Kind.HOLE);
                sizes.judge(path + ".head-depth", bored.headDepth(), Kind.EITHER);
            }
        }
        sizes.judge(path + ".x", hole.x(), Kind.EITHER);
        sizes.judge(path + ".y", hole.y(), Kind.EITHER);
        if (hole.depth() instanceof Depth.Blind(var depth)) {
            sizes.judge(path + ".depth", depth, Kind.EITHER);
        }
    }

    private void judgeTogether() {
        for (int i = 0; i < block.cuts().size(); i++) {
            new BlockCutCheck(block, findings).place(Paths.cut(i), block.cuts().get(i));
        }
        List<Hole> holes = block.holes();
        for (int i = 0; i < holes.size(); i++) {
            Hole hole = holes.get(i);
            String path = Paths.hole(i);
            within(
                    path + ".x",
                    "long",
                    hole.x().length(),
                    diameter(hole),
                    block.length().length());
            within(
                    path + ".y",
                    "wide",
                    hole.y().length(),
                    diameter(hole),
                    block.width().length());
            bottom(path + ".depth", hole);
            if (hole instanceof Hole.Counterbored bored) {
                head(path, bored);
            }
            for (int j = 0; j < i; j++) {
                apart(path, hole, holes.get(j));
            }
        }
    }

    /** The diameter that a hole has when it is done, over the roots of a thread. */
    private static Length diameter(Hole hole) {
        return switch (hole) {
            case Hole.Drilled drilled -> drilled.diameter().length();
            case Hole.Reamed reamed -> reamed.diameter().length();
            case Hole.Tapped tapped -> tapped.thread().majorInternal();
            case Hole.Counterbored bored -> bored.head().length();
        };
    }

    private void within(String path, String way, Length centre, Length diameter, Length size) {
        Length low = centre.minus(diameter.half());
        Length high = size.minus(centre.plus(diameter.half()));
        Length wall = Length.least(low, high);
        if (!wall.isPositive()) {
            findings.fault(
                    path,
                    PartFault.HOLE_OFF_BLOCK,
                    "This hole breaks the edge of a block " + findings.say(size) + " " + way + ".");
        } else if (wall.isLessThan(WallCheck.LEAST_WALL)) {
            findings.fault(
                    path,
                    PartFault.WALL_TOO_THIN,
                    "Only " + findings.say(wall) + " is left between this hole and the edge: at least "
                            + findings.say(WallCheck.LEAST_WALL) + " is needed.");
        }
    }

    private void bottom(String path, Hole hole) {
        if (hole.depth() instanceof Depth.Blind(var depth)) {
            Length deepest = depth.length().plus(room(hole)).plus(point(hole));
            if (deepest.isMoreThan(block.thickness().length().minus(WallCheck.LEAST_WALL))) {
                findings.fault(
                        path,
                        PartFault.BREAKS_THROUGH,
                        "With the point and the room its tool needs, this hole goes " + findings.say(deepest)
                                + " into a block "
                                + findings.say(block.thickness().length())
                                + " thick: make it less deep, or go through.");
            }
        }
    }

    private void head(String path, Hole.Counterbored bored) {
        Length below = switch (bored.depth()) {
            case Depth.Through() -> block.thickness().length();
            case Depth.Blind(var depth) -> depth.length();
        };
        if (!bored.head().length().isMoreThan(bored.diameter().length())) {
            findings.fault(
                    path + ".head",
                    PartFault.COUNTERBORE_NOT_WIDER,
                    "A counterbore is wider than its hole, "
                            + findings.say(bored.diameter().length()) + ".");
        } else if (!bored.headDepth().length().isLessThan(below.minus(WallCheck.LEAST_WALL))) {
            findings.fault(
                    path + ".head-depth",
                    PartFault.BREAKS_THROUGH,
                    "This counterbore leaves nothing for a head to bear on: it must be less deep than "
                            + findings.say(below) + ".");
        }
    }

    private static Length room(Hole hole) {
        return switch (hole) {
            case Hole.Drilled drilled -> Length.ZERO;
            case Hole.Reamed reamed -> ToolRoom.forReamer(reamed.diameter().length());
            case Hole.Tapped tapped -> ToolRoom.forTap(tapped.thread());
            case Hole.Counterbored bored -> Length.ZERO;
        };
    }

    private static Length point(Hole hole) {
        return switch (hole) {
            case Hole.Drilled drilled -> DrillPoint.height(drilled.diameter().length());
            case Hole.Reamed reamed -> DrillPoint.height(reamed.diameter().length());
            case Hole.Tapped tapped -> DrillPoint.height(tapped.thread().minorInternal());
            case Hole.Counterbored bored -> DrillPoint.height(bored.diameter().length());
        };
    }

    private void apart(String path, Hole hole, Hole other) {
        Length centres = Length.mm(Math.hypot(
                hole.x().length().minus(other.x().length()).mm(),
                hole.y().length().minus(other.y().length()).mm()));
        Length wall = centres.minus(diameter(hole).plus(diameter(other)).half());
        if (wall.isLessThan(WallCheck.LEAST_WALL)) {
            findings.fault(
                    path + "." + Paths.key(hole),
                    PartFault.HOLES_OVERLAP,
                    "This hole runs into '" + other.name() + "' or leaves less than "
                            + findings.say(WallCheck.LEAST_WALL) + " between them.");
        }
    }
}
