package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.OnEnd;
import chargehand.part.shape.Solid;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** The work at the beginning of a method for a part that comes back to be altered: what the drawing says is there. */
final class AsItCame {
    private final Body.Turned came;
    private final Solid solid;

    private AsItCame(Body.Turned came) {
        this.came = came;
        this.solid = Solid.of(came);
    }

    /** The old part; nothing where the drawing has none, or the blank is not of its size. */
    static Optional<TurnedWork> work(Body.Turned body, Blank.OldPart blank) {
        return body.asItCame()
                .filter(came -> came.length().isWithin(Deviation.ALLOWED, blank.length())
                        && came.largestDiameter().isWithin(Deviation.ALLOWED, blank.largest()))
                .map(came -> new AsItCame(came).work());
    }

    private TurnedWork work() {
        var features = new Features(
                threads(),
                flats(),
                holes(),
                keyways(),
                centres(),
                solid.teeth(),
                new SlotsCheck(came).asked(),
                List.of());
        return new TurnedWork(solid.outer(), solid.inner(), features, false);
    }

    private List<Features.ThreadCut> threads() {
        return solid.threads().stream()
                .map(place ->
                        new Features.ThreadCut(place.thread(), place.inside(), new Span(place.from(), place.to())))
                .toList();
    }

    private List<Features.FlatsCut> flats() {
        return solid.flats().stream()
                .map(place -> new Features.FlatsCut(place.sides(), place.across(), new Span(place.from(), place.to())))
                .toList();
    }

    private List<Cut.DrillAcross> holes() {
        return across(Across.CrossHole.class)
                .map(hole -> new Cut.DrillAcross(
                        hole.at().length(),
                        hole.diameter().length(),
                        hole.around(),
                        hole.depth() instanceof Depth.Through,
                        hole.depth() instanceof Depth.Blind(var size) ? size.length() : Length.ZERO))
                .toList();
    }

    private List<Cut.MillKeyway> keyways() {
        return across(Across.Keyway.class)
                .map(keyway -> new Cut.MillKeyway(
                        keyway.from().length(),
                        keyway.length().length(),
                        keyway.width().length(),
                        keyway.depth().length(),
                        keyway.around()))
                .toList();
    }

    private <F extends Across> Stream<F> across(Class<F> kind) {
        return came.across().stream().filter(kind::isInstance).map(kind::cast);
    }

    private List<Features.CentreHole> centres() {
        return came.onEnds().stream()
                .filter(OnEnd.Centre.class::isInstance)
                .map(OnEnd.Centre.class::cast)
                .map(centre ->
                        new Features.CentreHole(centre.end(), centre.hole().mouth()))
                .toList();
    }
}
