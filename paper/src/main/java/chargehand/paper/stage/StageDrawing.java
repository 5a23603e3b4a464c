package chargehand.paper.stage;

import chargehand.drawing.picture.Picture;
import chargehand.drawing.stage.BlockPicture;
import chargehand.drawing.stage.StagePicture;
import chargehand.measure.LengthUnit;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Machine;
import chargehand.method.plan.Method;
import chargehand.method.plan.SetUp;
import chargehand.method.replay.BlockWork;
import chargehand.method.replay.Proof;
import chargehand.method.replay.TurnedWork;
import chargehand.part.Body;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws the stage picture of each set-up of a method from the states its replay went through. */
public final class StageDrawing {
    private final Part part;
    private final Kit kit;

    public StageDrawing(Part part, Kit kit) {
        this.part = part;
        this.kit = kit;
    }

    /**
     * A picture for each set-up, in order; none for a set-up that the replay did not reach.
     *
     * @param width about how wide each should be (mm)
     * @param height about how high each should be (mm)
     */
    public List<Optional<Picture>> all(Method method, Proof proof, double width, double height) {
        var pictures = new ArrayList<Optional<Picture>>();
        for (SetUp setUp : method.setUps()) {
            pictures.add(proof.stages().stream()
                    .filter(stage -> stage.setUp() == setUp.number())
                    .findFirst()
                    .map(stage -> one(setUp, stage, width, height)));
        }
        return pictures;
    }

    private Picture one(SetUp setUp, Proof.Stage stage, double width, double height) {
        String title = "Set-up " + setUp.number() + " of " + part.title() + " on the " + setUp.machine();
        return switch (stage.before()) {
            case TurnedWork turned ->
                StagePicture.of(
                        new TurnedStage((Body.Turned) part.body(), setUp, stage, unit(setUp)).stage(title),
                        width,
                        height);
            case BlockWork block -> BlockPicture.of(new BlockStageOf(setUp, stage).stage(title), width, height);
        };
    }

    private LengthUnit unit(SetUp setUp) {
        return kit.find(setUp.machine()).map(Machine::unit).orElse(part.unit());
    }
}
