package chargehand.drawing.dimension;

import chargehand.drawing.picture.Point;
import chargehand.drawing.sign.Label;
import chargehand.drawing.sign.Wording;
import chargehand.drawing.view.Cut;
import chargehand.drawing.view.Side;
import chargehand.measure.Length;
import chargehand.part.End;
import chargehand.part.Section;
import chargehand.part.Size;
import chargehand.trade.thread.ScrewThread;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** The ways to give what a section is: its diameter, its thread, its flats. */
final class SectionWays {
    private static final Pattern BY = Pattern.compile("(?<=\\d)x(?=\\d)");
    private static final double LEADER = 14;
    private static final double CALLOUT = 2;
    private static final List<Double> PARTS = List.of(0.5, 0.25, 0.75, 0.9);

    private final Subject subject;
    private final int index;
    private final Section section;
    private final double from;
    private final double to;

    SectionWays(Subject subject, int index) {
        this.subject = subject;
        this.index = index;
        section = subject.body().outside().get(index);
        from = subject.x(subject.body().start(index));
        to = subject.x(subject.body().start(index + 1));
    }

    /** One list of ways for each thing to give. */
    List<List<Placing>> all() {
        return switch (section) {
            case Section.Round(var stretch, Size diameter) -> List.of(cylinder(diameter));
            case Section.Groove(var stretch, Size diameter) -> List.of(cylinder(diameter));
            case Section.Threaded(var stretch, var thread, String fit) -> List.of(called(thread(thread, fit)));
            case Section.Polygon(var stretch, int sides, Size flats, var corners) -> List.of();
            case Section.Toothed toothed -> List.of(cylinder(toothed.outside()));
            case Section.Curved curved -> {
                List<List<Placing>> ways = cone(curved.towardsA(), curved.towardsB());
                ways.add(called(Wording.of("R" + subject.text().figures(curved.radius()))));
                yield ways;
            }
            case Section.Knurled knurled -> List.of(cylinder(knurled.diameter()), called(knurl(knurled)));
            case Section.Cone(var stretch, Size towardsA, Size towardsB, String taper) -> {
                List<List<Placing>> ways = cone(towardsA, towardsB);
                if (!taper.isBlank()) {
                    ways.add(called(taper(taper, towardsB.length().isLessThan(towardsA.length()))));
                }
                yield ways;
            }
        };
    }

    /** A thread as the drawing names it, with its class of fit where one is written. */
    static Wording thread(ScrewThread thread, String fit) {
        return Wording.of(threadName(thread, fit));
    }

    static String threadName(ScrewThread thread, String fit) {
        String name = BY.matcher(thread.designation()).replaceAll(" × ");
        return fit.isBlank() ? name : name + " - " + fit;
    }

    /** A knurl by the letters of DIN 82 (from memory) and its pitch. */
    private Wording knurl(Section.Knurled knurled) {
        String letters = switch (knurled.pattern()) {
            case STRAIGHT -> "RAA";
            case DIAMOND -> "RGE";
        };
        return Wording.of("knurl " + letters + " " + subject.text().figures(knurled.pitch()));
    }

    /** A taper with its sign, which closes the way the cone does; an angle needs none. */
    private static Wording taper(String taper, boolean closesRight) {
        return taper.contains("°")
                ? Wording.of(taper)
                : Wording.taper(closesRight).then(Wording.of(" " + taper));
    }

    private List<Placing> cylinder(Size diameter) {
        Wording wording = subject.text().diameter(diameter);
        DiameterWays ways = upright(diameter, wording);
        List<Placing> all = new ArrayList<>();
        if (subject.look().cut() != Cut.FULL) {
            all.addAll(ways.within(from, to));
        }
        all.addAll(beyond(ways, diameter.length(), End.A, from));
        all.addAll(beyond(ways, diameter.length(), End.B, to));
        all.addAll(leaders(Subject.inscription(wording), LEADER, PARTS));
        return all;
    }

    private List<List<Placing>> cone(Size towardsA, Size towardsB) {
        List<List<Placing>> both = new ArrayList<>();
        if (towardsA.length().isPositive() && (index == 0 || !endsAlike(index - 1, towardsA.length()))) {
            both.add(coneEnd(towardsA, End.A, from, 0.0));
        }
        boolean last = index == subject.body().outside().size() - 1;
        if (towardsB.length().isPositive() && (last || !endsAlike(index + 1, towardsB.length()))) {
            both.add(coneEnd(towardsB, End.B, to, 1.0));
        }
        return both;
    }

    /** Whether a neighbour gives the same diameter already, where it meets this section. */
    private boolean endsAlike(int neighbour, Length diameter) {
        Section other = subject.body().outside().get(neighbour);
        Length theirs = neighbour < index ? other.diameterTowardsB() : other.diameterTowardsA();
        boolean givesItsEnds = other instanceof Section.Cone || other instanceof Section.Curved;
        return theirs.equals(diameter) && !(givesItsEnds && neighbour > index);
    }

    private List<Placing> coneEnd(Size diameter, End end, double corner, double part) {
        Wording wording = subject.text().diameter(diameter);
        List<Placing> all = new ArrayList<>(beyond(upright(diameter, wording), diameter.length(), end, corner));
        all.addAll(leaders(Subject.inscription(wording), LEADER, List.of(part)));
        return all;
    }

    private DiameterWays upright(Size diameter, Wording wording) {
        List<Side> sides = subject.look().cut() == Cut.HALF ? List.of(Side.ABOVE) : List.of(Side.ABOVE, Side.BELOW);
        return new DiameterWays(subject.size(diameter.length()) / 2, sides, wording);
    }

    /** Beyond an end, if nothing larger stands between. */
    private List<Placing> beyond(DiameterWays ways, Length diameter, End end, double corner) {
        List<Section> outside = subject.body().outside();
        List<Section> between = end == End.A ? outside.subList(0, index) : outside.subList(index + 1, outside.size());
        boolean hidden = between.stream()
                .anyMatch(other -> Length.most(other.diameterTowardsA(), other.diameterTowardsB())
                        .isMoreThan(diameter));
        return hidden ? List.of() : ways.beyond(corner, subject.x(end), Subject.out(end));
    }

    /** A callout above, on a leader. */
    List<Placing> called(Wording wording) {
        return leaders(Subject.inscription(wording), CALLOUT, PARTS);
    }

    /** Leaders from the outside above, and less gladly below. */
    List<Placing> leaders(Label label, double base, List<Double> parts) {
        List<Placing> all = new ArrayList<>();
        LeaderWays ways = new LeaderWays(label, base);
        all.addAll(ways.past(tips(Side.ABOVE, parts), true, -subject.reach().outside(Side.ABOVE)));
        LeaderWays lower = new LeaderWays(label, base + LEADER);
        all.addAll(lower.past(tips(Side.BELOW, parts), false, subject.reach().outside(Side.BELOW)));
        return all;
    }

    /** Points on the outside, as parts of the way along the section. */
    List<Point> tips(Side side, List<Double> parts) {
        List<Point> tips = new ArrayList<>();
        for (double part : parts) {
            double x = from + part * (to - from);
            subject.look()
                    .scale()
                    .at(x)
                    .ifPresent(at -> tips.add(new Point(x, side.outward() * radius(side, at, part))));
        }
        return tips;
    }

    private double radius(Side side, Length at, double part) {
        if (part > 0 && part < 1) {
            return subject.reach().outside(side, at);
        }
        return subject.size(part == 0 ? section.diameterTowardsA() : section.diameterTowardsB()) / 2;
    }
}
