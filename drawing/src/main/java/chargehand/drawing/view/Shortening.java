package chargehand.drawing.view;

import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Section;
import chargehand.part.shape.Solid;
import java.util.ArrayList;
import java.util.List;

/** Finds the long plain stretches of a turned part that may be left out of the middle of a view. */
public final class Shortening {
    /** What stays of a broken stretch on either side (mm on paper), where the diameter needs no more. */
    private static final double KEPT = 18;

    /** A gap shorter than this is not worth a break (mm on paper). */
    private static final double WORTH = 25;

    private Shortening() {}

    /** The scale with every stretch left out that can be. */
    public static AxialScale of(Body.Turned body, Solid solid, double scale) {
        List<AxialScale.Gap> gaps = new ArrayList<>();
        for (int i = 0; i < body.outside().size(); i++) {
            Section section = body.outside().get(i);
            if (isLevel(section)) {
                double kept = Math.max(KEPT, scale * section.diameterTowardsA().mm() * 0.6) / scale;
                Length from = body.start(i).plus(Length.mm(kept));
                Length to = body.start(i + 1).minus(Length.mm(kept));
                if (scale * to.minus(from).mm() > WORTH && isPlain(body, solid, from, to)) {
                    gaps.add(new AxialScale.Gap(from, to));
                }
            }
        }
        return new AxialScale(scale, gaps);
    }

    private static boolean isLevel(Section section) {
        return switch (section) {
            case Section.Round round -> true;
            case Section.Threaded threaded -> !threaded.thread().isTaper();
            case Section.Cone cone -> false;
            case Section.Polygon polygon -> false;
            case Section.Groove groove -> false;
        };
    }

    private static boolean isPlain(Body.Turned body, Solid solid, Length from, Length to) {
        boolean bore = solid.innerAtMost().stations().stream()
                .noneMatch(
                        station -> station.at().isMoreThan(from) && station.at().isLessThan(to));
        return bore && body.across().stream().noneMatch(feature -> meets(feature, from, to));
    }

    private static boolean meets(Across feature, Length from, Length to) {
        return switch (feature) {
            case Across.CrossHole hole -> {
                Length half = hole.diameter().length();
                yield hole.at().length().plus(half).isMoreThan(from)
                        && hole.at().length().minus(half).isLessThan(to);
            }
            case Across.Keyway keyway ->
                keyway.from().length().isLessThan(to)
                        && keyway.from().length().plus(keyway.length().length()).isMoreThan(from);
        };
    }
}
