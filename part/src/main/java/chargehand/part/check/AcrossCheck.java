package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.Section;
import chargehand.part.check.SizeCheck.Kind;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import java.util.List;

/** Judges the holes, keyways and flats across a turned part. */
final class AcrossCheck {
    private final Findings findings;

    AcrossCheck(Findings findings) {
        this.findings = findings;
    }

    /** Judges the sizes of one feature by themselves. */
    void judge(String path, Across across, SizeCheck sizes) {
        switch (across) {
            case Across.CrossHole hole -> {
                sizes.judge(path + ".hole", hole.diameter(), Kind.HOLE);
                sizes.judge(path + ".at", hole.at(), Kind.EITHER);
                if (hole.depth() instanceof Depth.Blind(var depth)) {
                    sizes.judge(path + ".depth", depth, Kind.EITHER);
                }
            }
            case Across.Keyway keyway -> {
                sizes.judge(path + ".keyway", keyway.width(), Kind.HOLE);
                sizes.judge(path + ".depth", keyway.depth(), Kind.EITHER);
                sizes.judge(path + ".length", keyway.length(), Kind.EITHER);
                keyway(path, keyway);
            }
            case Across.TaperPin pin -> {
                sizes.judge(path + ".taper-pin", pin.nominal(), Kind.HOLE);
                sizes.judge(path + ".at", pin.at(), Kind.EITHER);
                taperPin(path + ".taper-pin", pin.nominal().length());
            }
            case Across.Slit slit -> {
                sizes.judge(path + ".slit", slit.width(), Kind.HOLE);
                sizes.judge(path + ".length", slit.length(), Kind.EITHER);
                begins(path, slit);
            }
            case Across.Flat flat -> {
                sizes.judge(path + "." + Paths.key(flat), flat.depth().size(), Kind.EITHER);
                sizes.judge(path + ".length", flat.length(), Kind.EITHER);
                begins(path, flat);
            }
        }
    }

    private void taperPin(String path, Length nominal) {
        if (SizeCheck.isMakeable(nominal) && !TaperPins.isMade(nominal)) {
            findings.fault(
                    path,
                    PartFault.TAPER_PIN_SIZE,
                    "Taper pins of 1 in 50 are named by their small end in whole sizes of ISO 2339; the nearest is "
                            + findings.say(TaperPins.nearest(nominal)) + ".");
        }
    }

    private void begins(String path, Across feature) {
        if (feature.begins().isNegative()) {
            findings.fault(path + ".at", PartFault.ACROSS_OFF_PART, "This begins on the part, from end A onward.");
        }
    }

    private void keyway(String path, Across.Keyway keyway) {
        begins(path, keyway);
        if (keyway.length().length().isLessThan(keyway.width().length())) {
            findings.fault(
                    path + ".length",
                    PartFault.KEYWAY_TOO_SHORT,
                    "A keyway is no shorter than it is wide, "
                            + findings.say(keyway.width().length()) + ".");
        }
    }

    /** Judges all features across a part whose outside and inside are sound. */
    void judgeTogether(Body.Turned body, Solid solid) {
        Profile hollow = solid.hollowAtMost();
        var crossHoles = new CrossHoleCheck(body, solid.outerAtLeast(), hollow, findings);
        List<Across> all = body.across();
        for (int i = 0; i < all.size(); i++) {
            switch (all.get(i)) {
                case Across.CrossHole hole -> crossHoles.judge(Paths.across(i), hole);
                case Across.Keyway keyway -> place(Paths.across(i), keyway, body, solid.outer(), hollow);
                case Across.TaperPin pin -> crossHoles.judge(Paths.across(i), pin);
                case Across.Slit slit ->
                    new SlitCheck(body, solid.outerAtLeast(), solid.inner(), findings).judge(Paths.across(i), slit);
                case Across.Flat flat ->
                    new FlatCheck(body, solid.outer(), hollow, findings).judge(Paths.across(i), flat);
            }
            for (int j = 0; j < i; j++) {
                overlap(Paths.across(i), all.get(i), all.get(j), solid.outer());
            }
        }
    }

    private void place(String path, Across.Keyway keyway, Body.Turned body, Profile outside, Profile hollow) {
        Length from = keyway.from().length();
        Length to = from.plus(keyway.length().length());
        if (to.isMoreThan(body.length())) {
            findings.fault(
                    path + ".length",
                    PartFault.ACROSS_OFF_PART,
                    "This keyway ends " + findings.say(to.minus(body.length())) + " beyond end B.");
        } else if (!isOnPlainSection(from, to, body)) {
            findings.fault(
                    path + ".at",
                    PartFault.KEYWAY_OFF_SECTION,
                    "A keyway lies within one round section or cone: from " + findings.say(from) + " to "
                            + findings.say(to) + " lie others.");
        } else {
            bottom(path, keyway, outside.least(from, to), hollow.most(from, to));
        }
    }

    private static boolean isOnPlainSection(Length from, Length to, Body.Turned body) {
        for (int i = 0; i < body.outside().size(); i++) {
            Length start = body.start(i);
            Section section = body.outside().get(i);
            boolean holds = !from.isLessThan(start) && !to.isMoreThan(start.plus(section.length()));
            if (holds && (section instanceof Section.Round || section instanceof Section.Cone)) {
                return true;
            }
        }
        return false;
    }

    private void bottom(String path, Across.Keyway keyway, Length outside, Length hollow) {
        Length left = outside.minus(keyway.depth().length()).minus(hollow);
        if (!keyway.width().length().isLessThan(outside.times(2))) {
            findings.fault(
                    path + ".keyway",
                    PartFault.ACROSS_TOO_WIDE,
                    "This keyway is as wide as the part is here, " + findings.say(outside.times(2)) + ".");
        } else if (!left.isPositive()) {
            findings.fault(
                    path + ".depth",
                    PartFault.BREAKS_THROUGH,
                    "This keyway reaches the bore or the axis: only " + findings.say(outside.minus(hollow))
                            + " of wall is there to cut it in.");
        } else if (left.isLessThan(WallCheck.LEAST_WALL)) {
            findings.fault(
                    path + ".depth",
                    PartFault.WALL_TOO_THIN,
                    "Only " + findings.say(left) + " is left below this keyway: at least "
                            + findings.say(WallCheck.LEAST_WALL) + " is needed.");
        }
    }

    private static boolean isHole(Across feature) {
        return feature instanceof Across.CrossHole || feature instanceof Across.TaperPin;
    }

    /** A hole may be drilled in a flat; nothing else shares its place at the surface. */
    private void overlap(String path, Across one, Across other, Profile outside) {
        boolean drilledFlat =
                one instanceof Across.Flat != other instanceof Across.Flat && (isHole(one) || isHole(other));
        if (!drilledFlat && SurfaceMark.of(one, outside).isNear(SurfaceMark.of(other, outside), outside)) {
            findings.fault(
                    path + "." + Paths.key(one),
                    PartFault.ACROSS_OVERLAP,
                    "This runs into '" + other.name() + "' at the surface: leave at least "
                            + findings.say(WallCheck.LEAST_WALL) + " between them.");
        }
    }
}
