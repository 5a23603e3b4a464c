package chargehand.method.replay;

import chargehand.measure.Length;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Method;
import chargehand.method.plan.SetUp;
import chargehand.method.replay.Proof.Stage;
import chargehand.part.Body;
import chargehand.part.Tie;
import java.util.List;

/**
 * The run-out budget: two surfaces tied to each other are finished in one set-up, or the later one is made in a holding that
 * is true enough, by the earlier one or by what was made together with it.
 */
final class TieCheck {
    private final Body.Turned body;
    private final Method method;
    private final List<Stage> stages;
    private final FaultList faults;

    TieCheck(Body.Turned body, Method method, List<Stage> stages, FaultList faults) {
        this.body = body;
        this.method = method;
        this.stages = List.copyOf(stages);
        this.faults = faults;
    }

    void check(List<Tie> ties) {
        ties.forEach(tie -> TiedPlace.find(body, tie.of())
                .ifPresent(of -> TiedPlace.find(body, tie.to()).ifPresent(to -> check(tie, of, to))));
    }

    private void check(Tie tie, TiedPlace of, TiedPlace to) {
        int madeOf = made(of);
        int madeTo = made(to);
        if (madeOf == madeTo) {
            return;
        }
        TiedPlace earlier = madeOf < madeTo ? of : to;
        SetUp later = method.setUps().get(Math.max(madeOf, madeTo) - 1);
        Length allowed = tie.runOut().length();
        faults.at(later.number(), 0);
        faults.unless(
                isTrueTo(later.holding(), earlier) && !later.holding().runOut().isMoreThan(allowed),
                Fault.Code.NOT_TRUE,
                () -> "'" + tie.of() + "' and '" + tie.to() + "' may run out to each other by " + faults.size(allowed)
                        + ", and this holding is not so true to the one made before");
    }

    /** The set-up in which a surface was last cut, counted from 1; 0 where the stock brought it. */
    private int made(TiedPlace place) {
        int made = 0;
        for (int i = 0; i < stages.size(); i++) {
            if (stages.get(i).before() instanceof TurnedWork before
                    && stages.get(i).after() instanceof TurnedWork after
                    && isCut(place, before, after)) {
                made = i + 1;
            }
        }
        return made;
    }

    private static boolean isCut(TiedPlace place, TurnedWork before, TurnedWork after) {
        return !place.on(before).equals(place.on(after)) || place.threads(before) != place.threads(after);
    }

    private boolean isTrueTo(Holding holding, TiedPlace earlier) {
        return switch (holding) {
            case Holding.InChuck held -> held.jaws() == 4 || isBy(held, earlier);
            case Holding.InCollet held -> isBy(held.grip(), earlier);
            case Holding.InDividingHead held -> isBy(held.grip(), earlier);
            case Holding.OnMandrel held ->
                TiedPlace.middle(true, held.from(), held.to())
                        .filter(bore -> isBy(bore, earlier))
                        .isPresent();
            case Holding.OnStub held ->
                TiedPlace.middle(true, held.from(), held.to())
                        .filter(bore -> isBy(bore, earlier))
                        .isPresent();
            case Holding.OnFaceplate held -> true;
            case Holding.BetweenCentres held -> isOnCentres(made(earlier));
            case Holding.LaidAcross held -> false;
            case Holding.InVice held -> false;
            case Holding.OnTable held -> false;
            case Holding.Clamped held -> false;
        };
    }

    private boolean isBy(Holding.InChuck held, TiedPlace earlier) {
        boolean inside = held.bearing() instanceof Holding.Bearing.Opening;
        return TiedPlace.middle(inside, held.grip().from(), held.grip().to())
                .filter(place -> isBy(place, earlier))
                .isPresent();
    }

    private boolean isBy(Holding.Grip grip, TiedPlace earlier) {
        return TiedPlace.middle(false, grip.from(), grip.to())
                .filter(place -> isBy(place, earlier))
                .isPresent();
    }

    /** Held by the surface itself, or by one made in the same set-up. */
    private boolean isBy(TiedPlace held, TiedPlace earlier) {
        boolean itself = held.inside() == earlier.inside() && held.span().meets(earlier.span());
        return itself || (made(held) == made(earlier) && made(held) > 0);
    }

    /** Work turned on its own centre holes is on the same axis each time. */
    private boolean isOnCentres(int setUp) {
        return setUp > 0 && method.setUps().get(setUp - 1).holding() instanceof Holding.BetweenCentres;
    }
}
