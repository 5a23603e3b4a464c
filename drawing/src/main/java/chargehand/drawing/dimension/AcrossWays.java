package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Label;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.Bearing;
import chargehand.drawing.view.Cut;
import chargehand.drawing.view.Side;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Depth;
import chargehand.part.FlatDepth;
import chargehand.part.Size;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;

/** The sizes of features across: callouts for holes, positions for all, and how they lie round the axis to each other. */
record AcrossWays(Subject subject) {
    private static final double CALLOUT = 2;

    /** How far a centre line runs past its hole (mm). */
    private static final double CENTRE_LINE = 2;

    private static final List<Integer> AROUND = List.of(60, 45, 120, 135, 75, 105, 30, 150);

    /** One list of ways for each hole. */
    List<List<Placing>> all() {
        List<List<Placing>> all = new ArrayList<>(holes());
        Bearing turn = subject.look().turn();
        for (Across feature : subject.body().across()) {
            switch (feature) {
                case Across.CrossHole hole -> {}
                case Across.TaperPin pin -> all.add(hole(pin.drilled(), wording(pin), Bearing.of(pin, turn)));
                case Across.Slit slit -> all.add(slit(slit, Bearing.of(slit, turn)));
                case Across.Keyway keyway -> {}
                case Across.Flat flat -> all.add(flat(flat, Bearing.of(flat, turn)));
            }
        }
        return all;
    }

    /** One list of ways for each kind of plain hole: a leader to any one of those alike. */
    private List<List<Placing>> holes() {
        Map<String, List<Across.CrossHole>> alike = new LinkedHashMap<>();
        for (Across feature : subject.body().across()) {
            if (feature instanceof Across.CrossHole hole) {
                alike.computeIfAbsent(wording(hole).toString(), key -> new ArrayList<>())
                        .add(hole);
            }
        }
        return alike.values().stream().map(this::callout).toList();
    }

    private List<Placing> callout(List<Across.CrossHole> holes) {
        Wording one = wording(holes.getFirst());
        Wording all = holes.size() > 1 ? Wording.of(holes.size() + "× ").then(one) : one;
        Bearing turn = subject.look().turn();
        return holes.stream()
                .flatMap(hole -> hole(hole, all, Bearing.of(hole, turn)).stream())
                .toList();
    }

    /** A callout for a flat, from the middle of it or from where it shows at the edge of the view. */
    private List<Placing> flat(Across.Flat flat, Bearing bearing) {
        Length middle = flat.begins().plus(flat.ends()).half();
        Length radius = subject.look().solid().outer().most(flat.begins(), flat.ends());
        double outer = subject.size(radius);
        double height = subject.size(flat.depth().height(radius));
        LeaderWays leader = new LeaderWays(Subject.inscription(wording(flat)), CALLOUT);
        double half = Math.sqrt(Math.max(0, outer * outer - height * height));
        return past(leader, subject.x(middle), seenAt(bearing, height, half));
    }

    /**
     * The height above the axis at which something shows that lies so far from it and reaches so far to either side: its
     * upper edge where it is seen aslant.
     */
    private static double seenAt(Bearing bearing, double out, double half) {
        boolean aslant = !bearing.isUp() && !bearing.isDown() && !bearing.isTowards();
        return out * bearing.up() + (aslant ? half * Math.abs(bearing.towards()) : 0);
    }

    private List<Placing> past(LeaderWays leader, double x, double height) {
        Point tip = new Point(x, -height);
        return height < 0
                ? leader.past(List.of(tip), false, subject.reach().outside(Side.BELOW))
                : leader.past(List.of(tip), true, -subject.reach().outside(Side.ABOVE));
    }

    private Wording wording(Across.TaperPin pin) {
        String with = pin.with().isEmpty() ? "" : " with " + pin.with() + " in place";
        return Wording.of("drill and taper-ream ")
                .then(subject.text().size(pin.nominal()))
                .then(Wording.of(", 1:50" + with));
    }

    /** A callout for a slit, from where it shows at the outside. */
    private List<Placing> slit(Across.Slit slit, Bearing bearing) {
        Length middle = slit.begins().plus(slit.ends()).half();
        double half = subject.size(slit.width().length()) / 2;
        double outer = subject.size(subject.look().solid().outer().radiusBefore(middle));
        boolean both = slit.walls() == Across.Walls.BOTH;
        Bearing seen = both && bearing.up() < 0 ? bearing.opposite() : bearing;
        Wording size = Wording.of("slit ").then(subject.text().size(slit.width()));
        Wording wording = both ? size.then(Wording.of(" right through")) : size;
        double rise = seen.isUp() || seen.isDown() ? outer : Math.sqrt(Math.max(0, outer * outer - half * half));
        double edge = seen.isTowards() ? half : seenAt(seen, rise, half);
        return past(new LeaderWays(Subject.inscription(wording), CALLOUT), subject.x(middle), edge);
    }

    private Wording wording(Across.Flat flat) {
        Wording size = subject.text().size(flat.depth().size());
        return switch (flat.depth()) {
            case FlatDepth.Below below -> Wording.of("flat ").then(size).then(Wording.of(" deep"));
            case FlatDepth.Leaving leaving -> size.then(Wording.of(" over flat"));
        };
    }

    private List<Placing> hole(Across.CrossHole hole, Wording wording, Bearing bearing) {
        boolean through = hole.depth() instanceof Depth.Through;
        Label label = Subject.inscription(wording);
        double x = subject.x(hole.at().length());
        double half = subject.size(hole.diameter().length()) / 2;
        double outside = subject.reach().outside(Side.ABOVE, hole.at().length());
        LeaderWays leader = new LeaderWays(label, CALLOUT);
        double top = -subject.reach().outside(Side.ABOVE);
        if (bearing.isTowards() || (bearing.isAway() && through)) {
            return round(leader, new Point(x, 0), half, top);
        }
        if (bearing.isDown() && subject.look().cut() != Cut.NONE && !through) {
            double middle = (outside + Math.max(subject.reach().inside(hole.at().length()), 0)) / 2;
            double low = (outside + middle) / 2;
            List<Point> walls = List.of(
                    new Point(x + half, middle),
                    new Point(x - half, middle),
                    new Point(x + half, low),
                    new Point(x - half, low));
            return leader.past(walls, false, subject.reach().outside(Side.BELOW));
        }
        double rim = Math.sqrt(Math.max(0, outside * outside - half * half));
        double up = through ? Math.abs(bearing.up()) : bearing.up();
        List<Point> mouths = List.of(new Point(x, -rim * up));
        return leader.past(mouths, true, top);
    }

    /** Leaders that aim at the middle of a circle. */
    private static List<Placing> round(LeaderWays leader, Point centre, double radius, double top) {
        return AROUND.stream()
                .map(angle -> centre.towards(angle, radius))
                .flatMap(tip -> leader.past(List.of(tip), true, top).stream())
                .toList();
    }

    private Wording wording(Across.CrossHole hole) {
        Wording size = subject.text().diameter(hole.diameter());
        return switch (hole.depth()) {
            case Depth.Through() -> size.then(Wording.of(" through"));
            case Depth.Blind(Size depth) ->
                size.then(Wording.of(", ")).then(subject.text().size(depth)).then(Wording.of(" deep"));
        };
    }

    /** Where the features lie along the axis. */
    List<AxialDimension> positions() {
        List<AxialDimension> positions = new ArrayList<>();
        for (Across feature : subject.body().across()) {
            switch (feature) {
                case Across.CrossHole hole -> add(Length.ZERO, hole.at().length(), hole.at(), positions);
                case Across.Keyway keyway -> addStretch(keyway, keyway.from(), keyway.length(), positions);
                case Across.Flat flat -> addStretch(flat, flat.from(), flat.length(), positions);
                case Across.TaperPin pin -> add(Length.ZERO, pin.at().length(), pin.at(), positions);
                case Across.Slit slit -> addStretch(slit, slit.from(), slit.length(), positions);
            }
        }
        return positions;
    }

    /** Where the extension lines of features begin that face the viewer (mm below the axis). */
    Map<Length, Double> starts() {
        Map<Length, Double> starts = new HashMap<>();
        Bearing turn = subject.look().turn();
        for (Across feature : subject.body().across()) {
            Bearing bearing = Bearing.of(feature, turn);
            if (bearing.isTowards() || bearing.isAway()) {
                switch (feature) {
                    case Across.CrossHole hole ->
                        starts.put(
                                hole.at().length(), subject.size(hole.diameter().length()) / 2 + CENTRE_LINE);
                    case Across.Keyway keyway -> putBoth(keyway, starts);
                    case Across.Flat flat -> putBoth(flat, starts);
                    case Across.TaperPin pin ->
                        starts.put(pin.at().length(), subject.size(pin.nominal().length()) / 2 + CENTRE_LINE);
                    case Across.Slit slit -> putBoth(slit, starts);
                }
            }
        }
        return starts;
    }

    private static void putBoth(Across feature, Map<Length, Double> starts) {
        starts.put(feature.begins(), 0.0);
        starts.put(feature.ends(), 0.0);
    }

    /** An end that lies on a face of the outside is given with that face already. */
    private void addStretch(Across feature, Size from, Size length, List<AxialDimension> positions) {
        addStretch(feature.begins(), from, length, positions);
    }

    void addStretch(Length begins, Size from, Size length, List<AxialDimension> positions) {
        Length ends = begins.plus(length.length());
        if (!isFace(begins) && !isFace(ends)) {
            add(Length.ZERO, begins, from, positions);
        }
        if (!isFace(begins) || !isFace(ends)) {
            add(begins, ends, length, positions);
        }
    }

    private boolean isFace(Length at) {
        return IntStream.rangeClosed(0, subject.body().outside().size())
                .anyMatch(i -> subject.body().start(i).equals(at));
    }

    private void add(Length from, Length to, Size size, List<AxialDimension> positions) {
        if (from.isLessThan(to)) {
            positions.add(new AxialDimension(from, to, subject.text().size(size)));
        }
    }

    static String capital(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }
}
