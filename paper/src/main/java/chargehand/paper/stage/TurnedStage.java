package chargehand.paper.stage;

import chargehand.drawing.stage.SettingSize;
import chargehand.drawing.stage.Stage;
import chargehand.drawing.stage.Work;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.holding.ByRule;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.method.replay.Features;
import chargehand.method.replay.Proof;
import chargehand.method.replay.TurnedWork;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.End;
import chargehand.part.shape.Solid;
import java.util.ArrayList;
import java.util.List;

/** One set-up of turned work as the drawing asks for it. */
final class TurnedStage {
    private final Body.Turned body;
    private final SetUp setUp;
    private final Proof.Stage proof;
    private final LengthUnit unit;

    TurnedStage(Body.Turned body, SetUp setUp, Proof.Stage proof, LengthUnit unit) {
        this.body = body;
        this.setUp = setUp;
        this.proof = proof;
        this.unit = unit;
    }

    Stage stage(String title) {
        TurnedWork before = (TurnedWork) proof.before();
        TurnedWork after = whole();
        End headstock = Holds.headstock(setUp.holding());
        return new Stage(
                title,
                work(before, after),
                Holds.of(setUp.holding(), before),
                headstock,
                new CutSurfaces(after, unit).list(setUp.operations()),
                settings(before, headstock));
    }

    /** The work when everything but the parting is done, so that what the jaws hold is still in the picture. */
    private TurnedWork whole() {
        for (Proof.Step step : proof.steps()) {
            Cut cut = operation(step.operation()).cut();
            if (cut instanceof Cut.PartOff || cut instanceof Cut.SawOff) {
                return (TurnedWork) step.before();
            }
        }
        return (TurnedWork) proof.after();
    }

    private Operation operation(int number) {
        return setUp.operations().stream()
                .filter(operation -> operation.number() == number)
                .findFirst()
                .orElseThrow();
    }

    private Work work(TurnedWork before, TurnedWork after) {
        Solid solid = after.solid();
        return new Work(
                solid.outer(), solid.inner(), before.outer(), solid.threads(), solid.flats(), across(after.features()));
    }

    /** The part's own cross features that have been cut by now. */
    private List<Across> across(Features cut) {
        return body.across().stream().filter(feature -> isCut(feature, cut)).toList();
    }

    private static boolean isCut(Across feature, Features cut) {
        return switch (feature) {
            case Across.CrossHole hole ->
                cut.holes().stream()
                        .anyMatch(drilled -> drilled.at().equals(hole.at().length()));
            case Across.Keyway keyway ->
                cut.keyways().stream()
                        .anyMatch(milled -> milled.from().equals(keyway.from().length()));
            case Across.Flat flat -> false;
            case Across.TaperPin pin -> false;
            case Across.Slit slit -> false;
        };
    }

    /** How far the work stands out of what holds it, and the longest stretch that is turned. */
    private List<SettingSize> settings(TurnedWork before, End headstock) {
        var sizes = new ArrayList<SettingSize>();
        Holds.front(setUp.holding()).ifPresent(front -> {
            Length face = before.face(headstock.other());
            if (!face.equals(front)) {
                String out = LengthText.in(ByRule.up(face.minus(front).abs(), unit), unit) + " out";
                sizes.add(new SettingSize(front, face, out));
            }
        });
        setUp.operations().stream()
                .map(Operation::cut)
                .filter(Cut.TurnDiameter.class::isInstance)
                .map(Cut.TurnDiameter.class::cast)
                .reduce((one, other) -> other)
                .ifPresent(turned -> sizes.add(new SettingSize(
                        turned.from(), turned.to(), LengthText.in(turned.to().minus(turned.from()), unit))));
        return sizes;
    }
}
