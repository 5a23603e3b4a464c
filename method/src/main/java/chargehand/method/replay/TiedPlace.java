package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.End;
import chargehand.part.Section;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import java.util.Optional;

/**
 * Where a named surface of a turned part lies, clear of its edges.
 *
 * @param inside whether it is in the hollow
 * @param span the middle half of it
 */
record TiedPlace(boolean inside, Span span) {
    /** Nothing where the part has no such surface along the axis. */
    static Optional<TiedPlace> find(Body.Turned body, String name) {
        return section(body, name)
                .or(() -> body.inside().stream()
                        .filter(bore -> bore.name().equals(name))
                        .findFirst()
                        .flatMap(bore -> bore(body, bore)));
    }

    private static Optional<TiedPlace> section(Body.Turned body, String name) {
        for (int i = 0; i < body.outside().size(); i++) {
            Section section = body.outside().get(i);
            if (section.name().equals(name)) {
                Length start = body.start(i);
                return middle(false, start, start.plus(section.length()));
            }
        }
        return Optional.empty();
    }

    private static Optional<TiedPlace> bore(Body.Turned body, Bore bore) {
        Length deep = switch (bore.depth()) {
            case Depth.Through through ->
                body.length().minus(opened(body, bore, bore.from().other()));
            case Depth.Blind(var size) -> size.length();
        };
        Length mouth = bore.from() == End.A ? Length.ZERO : body.length();
        End inward = bore.from().other();
        return middle(true, inward.from(mouth, opened(body, bore, bore.from())), inward.from(mouth, deep));
    }

    /** How deep a bore is opened out by larger blind ones from an end. */
    private static Length opened(Body.Turned body, Bore bore, End end) {
        Length opened = Length.ZERO;
        for (Bore other : body.inside()) {
            if (other.from() == end
                    && other.depth() instanceof Depth.Blind(var size)
                    && Solid.mouthDiameter(other).isMoreThan(Solid.mouthDiameter(bore))) {
                opened = Length.most(opened, size.length());
            }
        }
        return opened;
    }

    /** The middle half of a stretch, whichever way round. */
    static Optional<TiedPlace> middle(boolean inside, Length one, Length other) {
        return Span.between(one, other).map(span -> {
            Length quarter = span.length().times(0.25);
            return new TiedPlace(
                    inside, new Span(span.from().plus(quarter), span.to().minus(quarter)));
        });
    }

    /** This surface on work as it stands; nothing where there is no metal there. */
    Optional<Profile> on(TurnedWork work) {
        return Carving.within(inside ? work.inner() : work.outer(), span);
    }

    /** Threads on this surface count with it. */
    long threads(TurnedWork work) {
        return work.features().threads().stream()
                .filter(thread -> thread.inside() == inside && thread.over().meets(span))
                .count();
    }
}
