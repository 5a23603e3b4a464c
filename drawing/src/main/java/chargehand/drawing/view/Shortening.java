package chargehand.drawing.view;

import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Finds the long plain stretches of a turned part that may be left out of the middle of a view. */
public final class Shortening {
    /** What stays of a broken stretch on either side (mm on paper), where the diameter needs no more. */
    private static final double KEPT = 18;

    /** What stays of a broken stretch on either side, as a part of its diameter. */
    private static final double KEPT_OF_DIAMETER = 0.6;

    /** What stays of a broken stretch round a corner of the bore (mm on paper): room for the end of a break-out. */
    private static final double ROUND_BORE = 8;

    /** A gap shorter than this is not worth a break (mm on paper). */
    private static final double WORTH = 25;

    private Shortening() {}

    /** A stretch of the axis that must be drawn. */
    public record Stay(Length from, Length to) {}

    /** The scale with every stretch left out that can be. */
    public static AxialScale of(Solid solid, double scale) {
        return of(solid, scale, List.of());
    }

    /** The scale with every stretch left out that can be, and nothing of what must stay. */
    public static AxialScale of(Solid solid, double scale, List<Stay> stays) {
        List<Stay> all = new ArrayList<>(stays);
        solid.across().forEach(feature -> all.add(stay(feature)));
        solid.flats().forEach(place -> all.add(new Stay(place.from(), place.to())));
        Length round = Length.mm(ROUND_BORE / scale);
        solid.innerAtMost().stations().forEach(station -> all.add(round(station.at(), round)));
        List<AxialScale.Gap> gaps = new ArrayList<>();
        List<Station> outside = solid.outer().stations();
        for (int i = 1; i < outside.size(); i++) {
            Station before = outside.get(i - 1);
            Station after = outside.get(i);
            if (before.radius().equals(after.radius())) {
                double diameter = 2 * scale * before.radius().mm();
                Length kept = Length.mm(Math.max(KEPT, KEPT_OF_DIAMETER * diameter) / scale);
                Stay plain = new Stay(before.at().plus(kept), after.at().minus(kept));
                largest(plain, all)
                        .filter(gap -> scale * gap.to().minus(gap.from()).mm() > WORTH)
                        .ifPresent(gaps::add);
            }
        }
        return new AxialScale(scale, gaps);
    }

    /** The longest run of a stretch that nothing must stay in. */
    private static Optional<AxialScale.Gap> largest(Stay plain, List<Stay> stays) {
        List<Length> starts = new ArrayList<>(List.of(plain.from));
        stays.forEach(stay -> starts.add(Length.most(stay.to, plain.from)));
        return starts.stream()
                .map(start -> new Stay(start, next(start, plain.to, stays)))
                .filter(run -> run.from.isLessThan(run.to))
                .filter(run -> stays.stream().noneMatch(stay -> meets(stay, run.from, run.to)))
                .max(Comparator.comparing(run -> run.to.minus(run.from)))
                .map(run -> new AxialScale.Gap(run.from, run.to));
    }

    /** Where, coming from a start, the next thing begins that must stay, or the stretch ends. */
    private static Length next(Length start, Length end, List<Stay> stays) {
        return stays.stream()
                .map(Stay::from)
                .filter(from -> !from.isLessThan(start))
                .reduce(end, Length::least);
    }

    private static Stay stay(Across feature) {
        return switch (feature) {
            case Across.CrossHole hole -> round(hole);
            case Across.TaperPin pin -> round(pin.drilled());
            case Across.Slit slit -> new Stay(slit.begins(), slit.ends());
            case Across.Keyway keyway -> new Stay(keyway.begins(), keyway.ends());
            case Across.Flat flat -> new Stay(flat.begins(), flat.ends());
        };
    }

    private static Stay round(Length at, Length reach) {
        return new Stay(at.minus(reach), at.plus(reach));
    }

    private static Stay round(Across.CrossHole hole) {
        Length reach = hole.diameter().length();
        return new Stay(hole.at().length().minus(reach), hole.at().length().plus(reach));
    }

    private static boolean meets(Stay stay, Length from, Length to) {
        return stay.from().isLessThan(to) && stay.to().isMoreThan(from);
    }
}
