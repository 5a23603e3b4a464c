package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.measure.Volume;
import chargehand.method.plan.Blank;
import chargehand.part.End;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Solid.FlatsPlace;
import chargehand.part.shape.Solid.ThreadPlace;
import chargehand.trade.polygon.Polygon;
import java.util.List;
import java.util.stream.Stream;

/**
 * Turned work as it stands: a solid of revolution with what is cut into it besides. Positions are those of the finished
 * part; metal reaches from {@code outer.start()} to {@code outer.end()}.
 *
 * @param outer the outside, over thread crests and the corners of flats
 * @param inner the hollow, 0 where it is solid, over the crests of inside threads
 * @param features what else it carries
 * @param onBar whether it is still part of a longer bar
 */
public record TurnedWork(Profile outer, Profile inner, Features features, boolean onBar) implements Work {
    /** The raw work of a bar. */
    static TurnedWork of(Blank.RoundBar bar) {
        var span = new Span(bar.from(), bar.to());
        return solid(span, bar.diameter(), Features.NONE, bar.onBar());
    }

    /** The raw work of a bar with flats, sharp at its corners. */
    static TurnedWork of(Blank.PolygonBar bar) {
        var span = new Span(bar.from(), bar.to());
        Features flats = Features.NONE.withFlats(new Features.FlatsCut(bar.sides(), bar.flats(), span));
        return solid(span, new Polygon(bar.sides()).corners(bar.flats()), flats, bar.onBar());
    }

    private static TurnedWork solid(Span span, Length diameter, Features features, boolean onBar) {
        return new TurnedWork(Carving.level(span, diameter.half()), Carving.level(span, Length.ZERO), features, onBar);
    }

    /** From face to face. */
    public Span span() {
        return Carving.span(outer);
    }

    /** Where metal ends towards an end. */
    public Length face(End end) {
        return span().border(end);
    }

    /** The largest diameter within a stretch; 0 where there is no metal. */
    Length largest(Span stretch) {
        return Carving.within(outer, stretch)
                .map(profile -> profile.most(profile.start(), profile.end()).times(2))
                .orElse(Length.ZERO);
    }

    /** The smallest diameter within a stretch; 0 where there is no metal. */
    Length smallest(Span stretch) {
        return Carving.within(outer, stretch)
                .map(profile -> profile.least(profile.start(), profile.end()).times(2))
                .orElse(Length.ZERO);
    }

    /** The diameter of the hollow where it opens at an end; 0 where there is none. */
    Length mouth(End end) {
        Length radius = end == End.A ? inner.radiusAfter(inner.start()) : inner.radiusBefore(inner.end());
        return radius.times(2);
    }

    TurnedWork turned(Profile path) {
        return new TurnedWork(Carving.lowered(outer, path), inner, features, onBar);
    }

    TurnedWork opened(Profile path) {
        return new TurnedWork(outer, Carving.opened(inner, path), features, onBar);
    }

    TurnedWork with(Features others) {
        return new TurnedWork(outer, inner, others, onBar);
    }

    /** What lies within a stretch, the rest cut off; {@code stretch} holds some metal. */
    TurnedWork cutTo(Span stretch) {
        Span left = span().common(stretch).orElseThrow();
        return new TurnedWork(Carving.cut(outer, left), Carving.cut(inner, left), features, onBar);
    }

    /** The same, come off its bar. */
    TurnedWork offTheBar() {
        return new TurnedWork(outer, inner, features, false);
    }

    /** This work as a solid, for whoever draws it; what is cut across it is kept with the features. */
    public Solid solid() {
        return new Solid(outer, inner, inner, threads(), flats(), features.teeth(), List.of());
    }

    private List<ThreadPlace> threads() {
        return features.threads().stream()
                .filter(thread -> span().meets(thread.over()))
                .map(this::place)
                .toList();
    }

    private ThreadPlace place(Features.ThreadCut cut) {
        Span over = span().common(cut.over()).orElseThrow();
        Length root = cut.inside() ? cut.thread().majorInternal() : cut.thread().core();
        return new ThreadPlace(
                cut.thread().designation(), cut.thread(), cut.inside(), Carving.level(over, root.half()));
    }

    private List<FlatsPlace> flats() {
        return features.flats().stream().flatMap(this::places).toList();
    }

    private Stream<FlatsPlace> places(Features.FlatsCut cut) {
        return StandingFlats.on(outer, cut.across(), cut.over()).stream()
                .map(span -> new FlatsPlace(
                        cut.sides() + " flats", cut.sides(), cut.across(), largest(span), span.from(), span.to()));
    }

    @Override
    public Volume volume() {
        return solid().volume();
    }
}
