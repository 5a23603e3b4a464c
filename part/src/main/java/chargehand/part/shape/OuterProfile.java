package chargehand.part.shape;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Section;
import chargehand.trade.thread.PipeGauge;
import java.util.ArrayList;
import java.util.List;

/** Builds the turned outside of a part: sections in a row, their corners chamfered, rounded or filled. */
final class OuterProfile {
    private final Body.Turned body;
    private final List<Flank> flanks;

    private OuterProfile(Body.Turned body) {
        this.body = body;
        this.flanks = flanks(body);
    }

    static Profile of(Body.Turned body) {
        return new OuterProfile(body).profile();
    }

    /** The straight flanks of the sections before their corners are worked. */
    static List<Flank> flanks(Body.Turned body) {
        var flanks = new ArrayList<Flank>();
        Length start = Length.ZERO;
        for (Section section : body.outside()) {
            flanks.add(flank(section, start, smallEnd(body, section)));
            start = start.plus(section.length());
        }
        return List.copyOf(flanks);
    }

    private static Flank flank(Section section, Length start, End smallEnd) {
        Length end = start.plus(section.length());
        if (section instanceof Section.Threaded(var stretch, var thread, var fit) && thread.isTaper()) {
            double small = thread.gauge()
                    .map(gauge -> gauge.smallEnd(thread.major()))
                    .orElse(thread.major())
                    .nanometres();
            double large = small + section.length().nanometres() / PipeGauge.TAPER_ONE_IN;
            return switch (smallEnd) {
                case A -> new Flank(start, end, small / 2, large / 2);
                case B -> new Flank(start, end, large / 2, small / 2);
            };
        }
        return new Flank(
                start,
                end,
                section.diameterTowardsA().nanometres() / 2.0,
                section.diameterTowardsB().nanometres() / 2.0);
    }

    /** The end from which a taper thread is screwed in: where the part ends or the neighbour is the smaller one. */
    private static End smallEnd(Body.Turned body, Section section) {
        int index = body.outside().indexOf(section);
        int last = body.outside().size() - 1;
        if (index == 0 || index == last) {
            return index == 0 ? End.A : End.B;
        }
        Length before = body.outside().get(index - 1).diameterTowardsB();
        Length after = body.outside().get(index + 1).diameterTowardsA();
        return before.isMoreThan(after) ? End.B : End.A;
    }

    private Profile profile() {
        var stations = new ArrayList<Station>();
        for (int i = 0; i < flanks.size(); i++) {
            double before = i == 0 ? 0 : flanks.get(i - 1).towardsB();
            double after = i == flanks.size() - 1 ? 0 : flanks.get(i + 1).towardsA();
            Flank flank = flanks.get(i);
            Section section = body.outside().get(i);
            if (section instanceof Section.Curved curved) {
                stations.addAll(CurvedFlank.of(curved).stations(flank.from()));
            } else {
                stations.addAll(atA(flank, section.stretch().atA(), before));
                stations.addAll(atB(flank, section.stretch().atB(), after));
            }
        }
        return new Profile(stations);
    }

    private static List<Station> atA(Flank flank, Edge edge, double neighbour) {
        Corner corner = new Corner(flank.towardsA(), flank.slope(), neighbour > flank.towardsA());
        return corner.stations(worked(edge, flank.towardsA(), neighbour)).stream()
                .map(station -> new Station(flank.from().plus(station.at()), station.radius()))
                .toList();
    }

    private static List<Station> atB(Flank flank, Edge edge, double neighbour) {
        Corner corner = new Corner(flank.towardsB(), -flank.slope(), neighbour > flank.towardsB());
        return corner.stations(worked(edge, flank.towardsB(), neighbour)).reversed().stream()
                .map(station -> new Station(flank.to().minus(station.at()), station.radius()))
                .toList();
    }

    /** Where both neighbours are alike there is no corner to work. */
    private static Edge worked(Edge edge, double own, double neighbour) {
        return Math.round(own) == Math.round(neighbour) ? new Edge.Plain() : edge;
    }

    /**
     * The flank of a section: a cylinder or a cone.
     *
     * @param towardsA its radius at the end nearer A (nm)
     * @param towardsB its radius at the end nearer B (nm)
     */
    record Flank(Length from, Length to, double towardsA, double towardsB) {
        /** This flank brought nearer to the axis: the root of a thread of such depth. */
        Profile lowered(Length by) {
            double nm = by.nanometres();
            return new Profile(
                    List.of(new Station(from, radius(towardsA - nm)), new Station(to, radius(towardsB - nm))));
        }

        private static Length radius(double nm) {
            return new Length(Math.max(0, Math.round(nm)));
        }

        double slope() {
            return (towardsB - towardsA) / (to.nanometres() - from.nanometres());
        }
    }
}
