package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;

/** What the path of a tool does to a profile: it takes away outside, and opens inside, only over its own stretch. */
final class Carving {
    private Carving() {}

    static Span span(Profile profile) {
        return new Span(profile.start(), profile.end());
    }

    /** An outside with everything beyond the tool's path taken away. */
    static Profile lowered(Profile outside, Profile path) {
        return carved(outside, path, Profile::smaller);
    }

    /** A hollow opened out to the tool's path. */
    static Profile opened(Profile hollow, Profile path) {
        return carved(hollow, path, Profile::larger);
    }

    private static Profile carved(Profile profile, Profile path, BinaryOperator<Profile> change) {
        return span(profile)
                .common(span(path))
                .map(common -> spliced(profile, change.apply(cut(profile, common), cut(path, common))))
                .orElse(profile);
    }

    static Profile cut(Profile profile, Span span) {
        return profile.cut(span.from(), span.to());
    }

    /** What is left of a profile within a stretch. */
    static Optional<Profile> within(Profile profile, Span span) {
        return span(profile).common(span).map(common -> cut(profile, common));
    }

    private static Profile spliced(Profile profile, Profile stretch) {
        var stations = new ArrayList<Station>();
        if (profile.start().isLessThan(stretch.start())) {
            stations.addAll(profile.cut(profile.start(), stretch.start()).stations());
        }
        stations.addAll(stretch.stations());
        if (stretch.end().isLessThan(profile.end())) {
            stations.addAll(profile.cut(stretch.end(), profile.end()).stations());
        }
        return new Profile(stations);
    }

    /** The same radius all along a stretch. */
    static Profile level(Span span, Length radius) {
        return Profile.level(span.from(), span.to(), radius);
    }

    /** A straight line between two points of the plane through the axis, given either way round. */
    static Profile line(Station one, Station other) {
        return new Profile(one.at().isLessThan(other.at()) ? List.of(one, other) : List.of(other, one));
    }
}
