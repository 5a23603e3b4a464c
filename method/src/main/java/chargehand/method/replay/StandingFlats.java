package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.List;

/** The stretches on which flats still show: where the turned outside stands out beyond them. */
final class StandingFlats {
    private final Length flat;
    private final List<Span> shown = new ArrayList<>();

    private StandingFlats(Length flat) {
        this.flat = flat;
    }

    /**
     * In order from end A.
     *
     * @param across over two opposite flats
     */
    static List<Span> on(Profile outside, Length across, Span over) {
        var flats = new StandingFlats(across.half());
        Carving.within(outside, over).ifPresent(stretch -> flats.collect(stretch.stations()));
        return List.copyOf(flats.shown);
    }

    private void collect(List<Station> stations) {
        for (int i = 1; i < stations.size(); i++) {
            Station one = stations.get(i - 1);
            Station other = stations.get(i);
            if (one.radius().isMoreThan(flat) || other.radius().isMoreThan(flat)) {
                Span.between(beyond(one, other), beyond(other, one)).ifPresent(this::join);
            }
        }
    }

    /** Where the piece between two stations begins to stand out, coming from the first. */
    private Length beyond(Station one, Station other) {
        if (!one.radius().isLessThan(flat) || !other.radius().isMoreThan(flat)) {
            return one.at();
        }
        double share = flat.minus(one.radius()).over(other.radius().minus(one.radius()));
        return one.at().plus(other.at().minus(one.at()).times(share));
    }

    private void join(Span span) {
        if (!shown.isEmpty() && shown.getLast().to().equals(span.from())) {
            shown.add(new Span(shown.removeLast().from(), span.to()));
        } else {
            shown.add(span);
        }
    }
}
