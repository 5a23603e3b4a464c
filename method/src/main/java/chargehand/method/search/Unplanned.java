package chargehand.method.search;

import chargehand.method.plan.Planned.Code;
import chargehand.method.plan.Planned.Reason;
import chargehand.part.Across;
import chargehand.part.BlockCut;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Feature;
import chargehand.part.Hole;
import chargehand.part.InBore;
import chargehand.part.OnEnd;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** What of a part can be drawn but not yet planned: told by name before any search, so that no method leaves it out. */
final class Unplanned {
    private Unplanned() {}

    /** One reason for each; none for a part that can be planned. */
    static List<Reason> reasons(Body body) {
        return switch (body) {
            case Body.Turned turned -> reasons(turned);
            case Body.Block block -> reasons(block);
        };
    }

    private static List<Reason> reasons(Body.Block block) {
        var reasons = new ArrayList<Reason>();
        for (Hole hole : block.holes()) {
            if (hole instanceof Hole.Counterbored) {
                reasons.add(reason("Counterbored holes in blocks", hole.name()));
            }
        }
        for (BlockCut cut : block.cuts()) {
            reasons.add(reason("Slots and steps in blocks", cut.name()));
        }
        return reasons;
    }

    private static List<Reason> reasons(Body.Turned body) {
        var reasons = new ArrayList<Reason>();
        for (Feature feature : body.features()) {
            if (!feature.isThere()) {
                kind(feature).ifPresent(kind -> reasons.add(reason(kind, feature.name())));
            }
        }
        return reasons;
    }

    private static Reason reason(String kind, String name) {
        return new Reason(
                Code.NOT_PLANNED,
                kind + " are not planned here yet: " + name + ".",
                "Plan the rest without it, and do it by hand to the drawing.");
    }

    /** What a feature is called, if no method makes it. */
    private static Optional<String> kind(Feature feature) {
        return switch (feature) {
            case Section section -> kind(section);
            case Across across -> kind(across);
            case InBore inBore -> Optional.empty();
            case OnEnd.Drilled drilled -> Optional.empty();
            case OnEnd.Tapped tapped -> Optional.of("Tapped holes on a circle");
            case OnEnd.Slot slot -> Optional.of("Slots across an end");
            case OnEnd.Centre centre ->
                switch (centre.stays()) {
                    case MAY -> Optional.empty();
                    case MUST -> Optional.of("Centre holes that must stay");
                    case MUST_NOT -> Optional.of("Ends in which no centre hole may stay");
                };
            case Bore bore -> Optional.empty();
        };
    }

    private static Optional<String> kind(Section section) {
        return switch (section) {
            case Section.Toothed toothed -> Optional.empty();
            case Section.Knurled knurled -> Optional.of("Knurls");
            case Section.Curved curved -> Optional.of("Curved sections");
            case Section.Round round -> Optional.empty();
            case Section.Cone cone -> Optional.empty();
            case Section.Polygon polygon -> Optional.empty();
            case Section.Threaded threaded -> Optional.empty();
            case Section.Groove groove -> Optional.empty();
        };
    }

    private static Optional<String> kind(Across across) {
        return switch (across) {
            case Across.Flat flat -> Optional.of("Single flats");
            case Across.TaperPin pin -> Optional.of("Taper-pin holes");
            case Across.Slit slit -> Optional.of("Slits");
            case Across.CrossHole hole -> Optional.empty();
            case Across.Keyway keyway -> Optional.empty();
        };
    }
}
