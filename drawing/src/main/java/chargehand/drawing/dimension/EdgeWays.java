package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Label;
import chargehand.drawing.sign.WeldSign;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.Bearing;
import chargehand.drawing.view.BoreGroove;
import chargehand.drawing.view.Cut;
import chargehand.drawing.view.Side;
import chargehand.measure.AngleText;
import chargehand.measure.Length;
import chargehand.part.Bore;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Gives chamfers and radii: one leader for those alike, saying how many; where many are alike, a note instead.
 */
final class EdgeWays {
    /** So many alike are better said in a note. */
    private static final int MANY = 3;

    private static final double LEADER = 4;

    /** How much less a leader is liked at a cut half. */
    private static final double CUT = 10;

    /** How far round a quarter bend its middle lies, as a part of its radius. */
    private static final double MIDDLE = 1 - Math.sqrt(0.5);

    private final Subject subject;
    private final Map<String, List<Place>> places = new LinkedHashMap<>();
    private final Map<String, WeldSign> signs = new HashMap<>();

    /** A worked corner and where a leader may touch it. */
    private record Place(Point tip, boolean inside, End end) {}

    EdgeWays(Subject subject) {
        this.subject = subject;
        for (int i = 0; i < subject.body().outside().size(); i++) {
            addOutside(i, End.A);
            addOutside(i, End.B);
        }
        subject.body().inside().forEach(this::addMouth);
    }

    /** One list of ways for each kind of edge that is given by a leader. */
    List<List<Placing>> all() {
        List<List<Placing>> all = new ArrayList<>();
        places.forEach((text, alike) -> {
            if (alike.size() < MANY) {
                String count = alike.size() > 1 && !signs.containsKey(text) ? alike.size() + "× " : "";
                all.add(alike.stream()
                        .flatMap(place -> ways(place, count + text).stream())
                        .toList());
            }
        });
        return all;
    }

    /** What the notes say of edges without a leader. */
    List<String> notes() {
        List<String> notes = new ArrayList<>();
        places.forEach((text, alike) -> {
            if (alike.size() >= MANY) {
                notes.add(kind(text) + " not marked: " + text + ".");
            }
        });
        return notes;
    }

    private static String kind(String text) {
        return text.startsWith("R") ? "Radii" : text.contains("weld") ? "Edges for welding" : "Chamfers";
    }

    private List<Placing> ways(Place place, String text) {
        Label label = signs.containsKey(text) ? signs.get(text) : Subject.inscription(Wording.size(text));
        LeaderWays leader = new LeaderWays(label, LEADER);
        if (place.inside) {
            return leader.beyond(place.tip, Subject.out(place.end));
        }
        double above = subject.reach().outside(Side.ABOVE);
        List<Placing> ways = new ArrayList<>(leader.past(List.of(place.tip), true, -above));
        Point below = new Point(place.tip.x(), -place.tip.y());
        double dislike = subject.look().cut() == Cut.NONE ? LEADER : LEADER + CUT;
        ways.addAll(new LeaderWays(leader.label(), dislike)
                .past(List.of(below), false, subject.reach().outside(Side.BELOW)));
        return ways;
    }

    private void addOutside(int index, End end) {
        Section section = subject.body().outside().get(index);
        Edge edge = end == End.A ? section.stretch().atA() : section.stretch().atB();
        Length own = end == End.A ? section.diameterTowardsA() : section.diameterTowardsB();
        Length other = neighbour(index, end);
        if (own.equals(other)) {
            return;
        }
        double x = subject.x(subject.body().start(end == End.A ? index : index + 1));
        double seen = subject.reach()
                .outside(
                        Side.ABOVE,
                        subject.body().start(index).plus(section.length().half()));
        double most = section instanceof Section.Polygon ? seen : Double.MAX_VALUE;
        add(edge, new Corner(x, subject.size(own) / 2, -Subject.out(end), other.isMoreThan(own), most), false, end);
    }

    private Length neighbour(int index, End end) {
        List<Section> outside = subject.body().outside();
        if (end == End.A) {
            return index == 0 ? Length.ZERO : outside.get(index - 1).diameterTowardsB();
        }
        return index == outside.size() - 1
                ? Length.ZERO
                : outside.get(index + 1).diameterTowardsA();
    }

    private void addMouth(Bore bore) {
        switch (bore) {
            case Bore.Bored bored ->
                addMouth(bored, bored.mouth(), bored.diameter().length());
            case Bore.Reamed reamed ->
                addMouth(reamed, reamed.mouth(), reamed.diameter().length());
            case Bore.Counterbored wide ->
                addMouth(wide, wide.mouth(), wide.diameter().length());
            case Bore.Drilled drilled -> {}
            case Bore.Tapped tapped -> {}
            case Bore.Coned coned -> {}
        }
    }

    private void addMouth(Bore bore, Edge edge, Length diameter) {
        double x = subject.x(bore.from());
        Corner corner = new Corner(x, subject.size(diameter) / 2, -Subject.out(bore.from()), true, Double.MAX_VALUE)
                .beside(groove(bore.from()));
        add(edge, corner, true, bore.from());
    }

    /** Half the width of a groove that comes out at an end where the bore is cut below the axis; 0 for none (mm). */
    private double groove(End end) {
        Length face = end == End.A ? Length.ZERO : subject.body().length();
        return BoreGroove.of(subject.body(), subject.look().solid()).stream()
                .filter(groove -> groove.opensAt(face))
                .filter(groove ->
                        Bearing.of(groove.feature(), subject.look().turn()).isDown())
                .mapToDouble(groove -> subject.size(groove.width()) / 2)
                .max()
                .orElse(0);
    }

    /**
     * A corner on paper.
     *
     * @param into the way into the section: 1 to the right
     * @param hollow whether the edge leads outward from the radius
     * @param most how far from the axis it can be seen: flats may hide a corner turned beyond them
     * @param off how far out of the paper's plane it is seen, beside a groove
     */
    private record Corner(double x, double radius, int into, boolean hollow, double most, double off) {
        Corner(double x, double radius, int into, boolean hollow, double most) {
            this(x, radius, into, hollow, most, 0);
        }

        Corner beside(double groove) {
            return new Corner(x, radius, into, hollow, most, groove);
        }

        Point at(double along, double rise, boolean below) {
            double turned = Math.min(hollow ? radius + rise : radius - rise, most);
            double r = Math.sqrt(Math.max(0, turned * turned - off * off));
            return new Point(x + into * along, below ? r : -r);
        }
    }

    private void add(Edge edge, Corner corner, boolean inside, End end) {
        switch (edge) {
            case Edge.Plain() -> {}
            case Edge.Chamfer(var length, var angle) -> {
                double along = subject.size(length.length()) / 2;
                String text = subject.text().figures(length) + " × " + AngleText.seconds(angle);
                place(text, new Place(corner.at(along, along * angle.tan(), inside), inside, end));
            }
            case Edge.WeldPreparation prepared -> {
                Length reach = prepared.reach();
                Point middle = corner.at(
                        subject.size(reach) / 2, subject.size(prepared.depth().length()) / 2, inside);
                signs.put(weld(prepared), sign(prepared));
                place(weld(prepared), new Place(middle, inside, end));
            }
            case Edge.Radius(var radius) -> {
                double off = MIDDLE * subject.size(radius.length());
                place("R" + subject.text().figures(radius), new Place(corner.at(off, off, inside), inside, end));
            }
        }
    }

    /** A weld preparation in words, its depth first as ISO 2553 has it. */
    private String weld(Edge.WeldPreparation prepared) {
        String joint = switch (prepared.joint()) {
            case SINGLE_V -> "single V";
            case SINGLE_BEVEL -> "single bevel";
        };
        return subject.text().figures(prepared.depth()) + " " + joint + " weld, bevel "
                + AngleText.seconds(prepared.angle())
                + prepared.gap()
                        .map(gap -> ", gap " + subject.text().figures(gap))
                        .orElse("");
    }

    /** The sign of the weld that an edge is prepared for; what it does not say of the edge stands in its fork. */
    private WeldSign sign(Edge.WeldPreparation prepared) {
        WeldSign.Shape shape = switch (prepared.joint()) {
            case SINGLE_V -> WeldSign.Shape.SINGLE_V;
            case SINGLE_BEVEL -> WeldSign.Shape.SINGLE_BEVEL;
        };
        String gap = prepared.gap()
                .map(size -> ", gap " + subject.text().figures(size))
                .orElse("");
        return new WeldSign(
                shape,
                subject.text().figures(prepared.depth()),
                "bevel " + AngleText.seconds(prepared.angle()) + gap,
                true,
                true,
                Placing.HEIGHT);
    }

    private void place(String text, Place place) {
        places.computeIfAbsent(text, key -> new ArrayList<>()).add(place);
    }
}
