package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Section;
import chargehand.part.shape.Profile;

/** Judges one flat against the section it lies on and the bores below it. */
final class FlatCheck {
    private final Body.Turned body;
    private final Profile outside;
    private final Profile hollow;
    private final Findings findings;

    FlatCheck(Body.Turned body, Profile outside, Profile hollow, Findings findings) {
        this.body = body;
        this.outside = outside;
        this.hollow = hollow;
        this.findings = findings;
    }

    void judge(String path, Across.Flat flat) {
        if (flat.ends().isMoreThan(body.length())) {
            findings.fault(
                    path + ".length",
                    PartFault.ACROSS_OFF_PART,
                    "This flat ends " + findings.say(flat.ends().minus(body.length())) + " beyond end B.");
        } else if (!isOnOneSection(flat)) {
            findings.fault(
                    path + ".at",
                    PartFault.FLAT_OFF_SECTION,
                    "A flat lies within one section that turns, with no teeth or flats of its own: from "
                            + findings.say(flat.begins()) + " to " + findings.say(flat.ends()) + " lie others.");
        } else {
            depth(path + "." + Paths.key(flat), flat);
        }
    }

    private boolean isOnOneSection(Across.Flat flat) {
        for (int i = 0; i < body.outside().size(); i++) {
            Length start = body.start(i);
            Section section = body.outside().get(i);
            boolean holds = !flat.begins().isLessThan(start) && !flat.ends().isMoreThan(start.plus(section.length()));
            if (holds) {
                return mayHaveFlat(section);
            }
        }
        return false;
    }

    private static boolean mayHaveFlat(Section section) {
        return switch (section) {
            case Section.Round round -> true;
            case Section.Cone cone -> true;
            case Section.Threaded threaded -> true;
            case Section.Knurled knurled -> true;
            case Section.Groove groove -> false;
            case Section.Polygon polygon -> false;
            case Section.Toothed toothed -> false;
            case Section.Curved curved -> true;
        };
    }

    private void depth(String path, Across.Flat flat) {
        Length radius = outside.most(flat.begins(), flat.ends());
        Length bore = hollow.most(flat.begins(), flat.ends());
        Length height = flat.depth().height(radius);
        Length left = bore.isPositive() ? height.minus(bore) : height.plus(radius);
        if (!height.isLessThan(radius)) {
            findings.fault(
                    path,
                    PartFault.FLAT_TAKES_NOTHING,
                    "The section is only " + findings.say(radius.times(2)) + " here: this flat takes nothing off.");
        } else if (!left.isPositive()) {
            findings.fault(
                    path,
                    PartFault.BREAKS_THROUGH,
                    bore.isPositive() ? "This flat reaches the bore." : "This flat leaves nothing of the section.");
        } else if (left.isLessThan(WallCheck.LEAST_WALL)) {
            findings.fault(
                    path,
                    PartFault.WALL_TOO_THIN,
                    "Only " + findings.say(left) + " is left below this flat: at least "
                            + findings.say(WallCheck.LEAST_WALL) + " is needed.");
        }
    }
}
