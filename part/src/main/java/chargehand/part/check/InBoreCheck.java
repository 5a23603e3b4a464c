package chargehand.part.check;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.End;
import chargehand.part.InBore;
import chargehand.part.check.SizeCheck.Kind;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/** Judges what is cut into the walls of bores. */
final class InBoreCheck {
    private final Body.Turned body;
    private final Findings findings;
    private final Profile outside;
    private final Profile bores;

    InBoreCheck(Body.Turned body, Findings findings) {
        var plain = Solid.of(new Body.Turned(body.outside(), body.inside(), List.of()));
        this.body = body;
        this.findings = findings;
        this.outside = plain.outerAtLeast();
        this.bores = plain.inner();
    }

    /** Judges the sizes of one thing by themselves. */
    static void judge(String path, InBore feature, SizeCheck sizes) {
        String key = path + "." + Paths.key(feature);
        switch (feature) {
            case InBore.Keyway keyway -> {
                sizes.judge(key, keyway.width(), Kind.HOLE);
                sizes.judge(path + ".depth", keyway.depth(), Kind.EITHER);
            }
            case InBore.OilGroove groove -> {
                sizes.judge(key, groove.width(), Kind.HOLE);
                sizes.judge(path + ".depth", groove.depth(), Kind.EITHER);
                if (groove.run() instanceof InBore.Run.Part(var from, var length)) {
                    sizes.judge(path + ".length", length, Kind.EITHER);
                }
            }
            case InBore.Recess recess -> {
                sizes.judge(key, recess.diameter(), Kind.HOLE);
                sizes.judge(path + ".width", recess.width(), Kind.EITHER);
            }
        }
    }

    /** Judges all of them in a part whose outside and bores are sound. */
    void judgeTogether() {
        List<InBore> all = body.inBores();
        for (int i = 0; i < all.size(); i++) {
            String path = Paths.inBore(i);
            InBore feature = all.get(i);
            bore(path, feature).ifPresent(bore -> place(path, feature, new Wall(bore, body.length())));
            for (int j = 0; j < i; j++) {
                apart(path, feature, all.get(j));
            }
        }
    }

    /** The bore that something is cut in, if it is there and has a plain wall. */
    private Optional<Bore> bore(String path, InBore feature) {
        List<Bore> plain = body.inside().stream()
                .filter(bore -> !(bore instanceof Bore.Tapped) && !(bore instanceof Bore.Coned))
                .toList();
        Optional<Bore> found = plain.stream()
                .filter(bore -> bore.name().equals(feature.bore()))
                .findFirst();
        if (found.isEmpty()) {
            findings.fault(
                    path + ".in",
                    PartFault.BORE_NAME,
                    "'" + feature.bore() + "' is no plain bore of this part"
                            + (plain.isEmpty()
                                    ? ": it has none."
                                    : ": it has "
                                            + plain.stream().map(Bore::name).collect(Collectors.joining(", ")) + "."));
        }
        return found;
    }

    /** The wall of a bore, from where to where it goes along the axis, and its radius. */
    private record Wall(Length from, Length to, Length radius) {
        private Wall(Bore bore, Length length) {
            this(
                    bore.from() == End.A ? Length.ZERO : length.minus(BoreCheck.depth(bore.depth(), length)),
                    bore.from() == End.A ? BoreCheck.depth(bore.depth(), length) : length,
                    Solid.mouthDiameter(bore).half());
        }

        private boolean holds(Length start, Length end) {
            return !start.isLessThan(from) && !end.isMoreThan(to);
        }
    }

    private void place(String path, InBore feature, Wall wall) {
        switch (feature) {
            case InBore.Keyway keyway -> keyway(path, keyway, wall);
            case InBore.OilGroove groove -> groove(path, groove, wall);
            case InBore.Recess recess -> recess(path, recess, wall);
        }
    }

    private void keyway(String path, InBore.Keyway keyway, Wall wall) {
        if (isTooWide(path, keyway, keyway.width().length(), wall)) {
            return;
        }
        Length bottom = wall.radius.plus(keyway.depth().length());
        Length corner =
                Length.mm(Math.hypot(bottom.mm(), keyway.width().length().half().mm()));
        if (isThick(path + ".depth", corner, wall.from, wall.to) && !runsOut(keyway, bottom, wall)) {
            findings.fault(
                    path + ".in",
                    PartFault.KEYWAY_WITHOUT_END,
                    "The tool that cuts this keyway has nowhere to run out: the bore must go through, or end in a recess"
                            + " at least " + findings.say(bottom.times(2)) + " in diameter.");
        }
    }

    /** Whether a bore is open at both ends, or ends in something as wide as the keyway is deep. */
    private boolean runsOut(InBore.Keyway keyway, Length bottom, Wall wall) {
        Bore bore = body.inside().stream()
                .filter(each -> each.name().equals(keyway.bore()))
                .findFirst()
                .orElseThrow();
        return switch (bore.depth()) {
            case Depth.Through() -> true;
            case Depth.Blind blind -> {
                Length end = bore.from() == End.A ? wall.to : wall.from;
                yield bores.radiusAfter(end).isMoreThan(bottom)
                        || bores.radiusBefore(end).isMoreThan(bottom)
                        || body.inBores().stream().anyMatch(other -> endsIn(other, end, bottom));
            }
        };
    }

    private static boolean endsIn(InBore other, Length end, Length radius) {
        return other instanceof InBore.Recess recess
                && !recess.from().length().isMoreThan(end)
                && !recess.from().length().plus(recess.width().length()).isLessThan(end)
                && !recess.diameter().length().half().isLessThan(radius);
    }

    private void groove(String path, InBore.OilGroove groove, Wall wall) {
        if (isTooWide(path, groove, groove.width().length(), wall)) {
            return;
        }
        Length bottom = wall.radius.plus(groove.depth().length());
        switch (groove.run()) {
            case InBore.Run.Open() -> isThick(path + ".depth", bottom, wall.from, wall.to);
            case InBore.Run.Part(var from, var length) -> {
                Length end = from.length().plus(length.length());
                if (liesIn(path + ".at", from.length(), end, wall)) {
                    isThick(path + ".depth", bottom, from.length(), end);
                }
            }
        }
    }

    private void recess(String path, InBore.Recess recess, Wall wall) {
        Length from = recess.from().length();
        Length to = from.plus(recess.width().length());
        Length bottom = recess.diameter().length().half();
        if (!bottom.isMoreThan(wall.radius)) {
            findings.fault(
                    path + ".recess",
                    PartFault.RECESS_NOT_WIDER,
                    "A recess is wider than its bore, " + findings.say(wall.radius.times(2)) + ".");
        } else if (liesIn(path + ".at", from, to, wall)) {
            isThick(path + ".recess", bottom, from, to);
        }
    }

    private boolean isTooWide(String path, InBore feature, Length width, Wall wall) {
        boolean tooWide = !width.isLessThan(wall.radius.times(2));
        if (tooWide) {
            findings.fault(
                    path + "." + Paths.key(feature),
                    PartFault.WIDER_THAN_BORE,
                    "This is as wide as its bore, " + findings.say(wall.radius.times(2)) + ".");
        }
        return tooWide;
    }

    /** Whether the wall of the bore itself is there over a stretch, no larger bore having taken it away. */
    private boolean liesIn(String path, Length from, Length to, Wall wall) {
        boolean there = wall.holds(from, to)
                && bores.cut(from, to).stations().stream().map(Station::radius).allMatch(wall.radius::equals);
        if (!there) {
            findings.fault(
                    path,
                    PartFault.OFF_BORE,
                    "From " + findings.say(from) + " to " + findings.say(to)
                            + " the wall of this bore is not there all along: it goes from " + findings.say(wall.from)
                            + " to " + findings.say(wall.to) + " at the most.");
        }
        return there;
    }

    private boolean isThick(String path, Length bottom, Length from, Length to) {
        Length left = outside.least(from, to).minus(bottom);
        boolean thick = !left.isLessThan(WallCheck.LEAST_WALL);
        if (!left.isPositive()) {
            findings.fault(path, PartFault.BREAKS_THROUGH, "This comes out through the outside of the part.");
        } else if (!thick) {
            findings.fault(
                    path,
                    PartFault.WALL_TOO_THIN,
                    "Only " + findings.say(left) + " of wall is left outside this: at least "
                            + findings.say(WallCheck.LEAST_WALL) + " is needed.");
        }
        return thick;
    }

    /** Straight things in one bore stand apart; what is there already may be cut away by what is made. */
    private void apart(String path, InBore one, InBore other) {
        if (one.bore().equals(other.bore()) && one.made() == other.made() && BoreMark.meet(one, other, body)) {
            findings.fault(
                    path + "." + Paths.key(one),
                    PartFault.IN_BORE_OVERLAP,
                    "This runs into '" + other.name() + "' in the same bore.");
        }
    }
}
