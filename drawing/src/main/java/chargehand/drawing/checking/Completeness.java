package chargehand.drawing.checking;

import chargehand.drawing.sheet.DrawnSheet;
import chargehand.drawing.sheet.DrawnView;
import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.part.Size;
import chargehand.part.Tolerance;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Whether a sheet gives everything that the part needs, and nothing that follows from something else. Lengths are right when
 * they make a tree over all positions (Dori, Communications of the ACM 35(10), 1992): taken here from where the arrows point,
 * not from how the lengths were chosen.
 */
final class Completeness {
    private final DrawnSheet sheet;
    private final PartSizes sizes;
    private final List<Claims> claims;
    private final List<SheetFault> faults = new ArrayList<>();

    Completeness(DrawnSheet sheet, PartSizes sizes) {
        this.sheet = sheet;
        this.sizes = sizes;
        claims = Claims.of(sheet, sizes).stream()
                .filter(claim -> !claim.printed().bracketed())
                .toList();
    }

    List<SheetFault> all() {
        boolean block = claims.stream().anyMatch(claim -> claim.view().shows() == DrawnView.Shows.PLAN);
        tree(block ? DrawnView.Shows.PLAN : DrawnView.Shows.SIDE, true, sizes.along());
        if (block) {
            tree(DrawnView.Shows.PLAN, false, sizes.upward());
        }
        diameters();
        threads();
        depths();
        return faults;
    }

    private void missing(String what) {
        faults.add(SheetFault.of(FaultKind.SIZE_MISSING, what + " is not given"));
    }

    private void twice(String what) {
        faults.add(SheetFault.of(FaultKind.SIZE_TWICE, what + " follows from other sizes"));
    }

    /** Lengths one way between positions. */
    private void tree(DrawnView.Shows shows, boolean level, Collection<Length> positions) {
        Map<Length, Length> above = new HashMap<>();
        for (Claims claim : claims) {
            boolean here = claim.view().shows() == shows
                    || (shows == DrawnView.Shows.SIDE && claim.view().shows() == DrawnView.Shows.DETAIL);
            if (here && (level ? claim.isLevel() : claim.isUpright())) {
                join(above, claim, level, positions);
            }
        }
        Length first = root(above, positions.iterator().next());
        positions.stream()
                .filter(position -> !root(above, position).equals(first))
                .map(position -> root(above, position))
                .distinct()
                .forEach(position -> missing("where " + position + " lies along"));
    }

    /** Joins what a length lies between; one that holds several times, all neighbours that are so far apart. */
    private void join(Map<Length, Length> above, Claims claim, boolean level, Collection<Length> positions) {
        Optional<Length> one = position(claim, 0, level, positions);
        Optional<Length> other = position(claim, 1, level, positions);
        if (one.isEmpty() || other.isEmpty()) {
            return;
        }
        if (!join(above, one.orElseThrow(), other.orElseThrow())) {
            twice("length " + claim.printed().text());
        }
        if (claim.printed().times() > 1) {
            Length apart = one.orElseThrow().minus(other.orElseThrow()).abs();
            List<Length> sorted = positions.stream().sorted().toList();
            for (int i = 1; i < sorted.size(); i++) {
                if (sorted.get(i).minus(sorted.get(i - 1)).equals(apart)) {
                    join(above, sorted.get(i - 1), sorted.get(i));
                }
            }
        }
    }

    private static Optional<Length> position(Claims claim, int tip, boolean level, Collection<Length> positions) {
        double at = level ? claim.tips().get(tip).x() : -claim.tips().get(tip).y();
        return SizeChecks.position(claim.view(), at, positions);
    }

    private static boolean join(Map<Length, Length> above, Length one, Length other) {
        Length a = root(above, one);
        Length b = root(above, other);
        if (!a.equals(b)) {
            above.put(a, b);
        }
        return !a.equals(b);
    }

    private static Length root(Map<Length, Length> above, Length at) {
        Length up = above.getOrDefault(at, at);
        return up.equals(at) ? at : root(above, up);
    }

    private void diameters() {
        Map<Length, Integer> wanted = new HashMap<>();
        Map<Length, Integer> allowed = new HashMap<>();
        for (Size size : sizes.diameters()) {
            wanted.merge(size.length(), 1, Integer::sum);
            allowed.merge(size.length(), 1, Integer::sum);
        }
        for (Size end : sizes.coneEnds()) {
            boolean read = !(end.tolerance() instanceof Tolerance.Bracketed);
            allowed.merge(end.length(), read ? 1 : 0, Integer::sum);
            wanted.putIfAbsent(end.length(), read ? 1 : 0);
        }
        sizes.corners().forEach(corners -> allowed.merge(corners, 1, Integer::sum));
        Map<Length, Integer> given = new HashMap<>();
        claims.stream()
                .map(Claims::printed)
                .forEach(printed ->
                        printed.diameters().forEach(diameter -> given.merge(diameter, printed.times(), Integer::sum)));
        LengthUnit unit = sheet.part().unit();
        wanted.forEach((length, times) -> {
            if (given.getOrDefault(length, 0) < times) {
                missing("diameter " + length.mm() + " mm (" + unit + ")");
            }
        });
        given.forEach((length, times) -> {
            if (allowed.containsKey(length) && allowed.getOrDefault(length, 0) < times) {
                twice("diameter " + length.mm() + " mm");
            }
        });
    }

    private void threads() {
        for (String thread : sizes.threads().stream().distinct().toList()) {
            long wanted = sizes.threads().stream().filter(thread::equals).count();
            int given = claims.stream()
                    .map(Claims::printed)
                    .filter(printed -> names(printed.text(), thread))
                    .mapToInt(Printed::times)
                    .sum();
            if (given < wanted) {
                missing("thread " + thread);
            }
        }
    }

    private static boolean names(String text, String thread) {
        String bare = text.replaceFirst("^\\d+× ", "");
        return bare.equals(thread) || bare.startsWith(thread + " ") || bare.startsWith(thread + ",");
    }

    private void depths() {
        for (Length depth : sizes.called()) {
            boolean given = claims.stream()
                    .map(Claims::printed)
                    .anyMatch(printed ->
                            printed.text().contains("deep") && printed.lengths().contains(depth));
            if (!given) {
                missing("depth " + depth);
            }
        }
    }
}
