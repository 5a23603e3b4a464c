package chargehand.trade.screwcutting;

import chargehand.measure.Length;
import chargehand.measure.Pitch;
import chargehand.trade.material.Material;
import chargehand.trade.material.MaterialKind;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import chargehand.trade.thread.ScrewThread;
import chargehand.trade.thread.ThreadKinds;
import chargehand.trade.wheels.WheelSet;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The cuts, the speed and the train for a thread in the lathe. */
@AutoService(Sum.class)
public final class ScrewCutSum implements Sum {
    private static final Length LONGEST = Length.mm(10_000);

    private static final Field<ScrewThread> THREAD =
            Field.required("thread", "Thread", ThreadKinds.THREAD, "M20x2.5, 1 BSW, Tr 30x6 LH");
    private static final Field<Length> LENGTH = Field.required(
            "length",
            "Length of thread",
            Kinds.where(Kinds.SIZE, length -> !length.isMoreThan(LONGEST), "is longer than any lathe here"),
            "40 mm or 1 1/2 in");
    private static final Field<Pitch> LEADSCREW =
            Field.optional("leadscrew", "Leadscrew", Kinds.PITCH, "8 tpi or 6 mm; left out, no train is looked for");
    private static final Field<List<Integer>> WHEELS = Field.optional(
            "wheels",
            "Wheels owned",
            Kinds.listOf(Kinds.count(WheelSet.FEWEST_TEETH, WheelSet.MOST_TEETH), WheelSet.MOST_WHEELS),
            "20,25,30,35,38,40,40,45,50,55,60,65; left out, no train is looked for");
    private static final Field<Material> MATERIAL =
            Field.optional("material", "Material", MaterialKind.MATERIAL, "EN3B", "EN8, brass, 316");
    private static final Field<Infeed> INFEED = Field.optional(
            "infeed", "Infeed", Infeed.INFEED, "straight, or the slide's angle such as 29.5; left out, what is usual");

    @Override
    public String name() {
        return "screw-cut";
    }

    @Override
    public String title() {
        return "Screw-cutting";
    }

    @Override
    public String purpose() {
        return "Plans the cuts for a thread in the lathe: depths, slide, speed, train, and whether a die would do better.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(THREAD, LENGTH, LEADSCREW, WHEELS, MATERIAL, INFEED);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("passes", "Cuts").shownFine(),
                Result.always("total", "Whole depth, on radius").shownFine(),
                Result.always("infeedAngle", "Slide set over from square"),
                Result.always("slideTotal", "Whole movement of the slide").shownFine(),
                Result.always("helixAngle", "Helix angle"),
                Result.always("rpm", "Turns a minute, at most"),
                Result.always("advice", "Tool or die"),
                Result.sometimes("train", "Nearest train"),
                Result.sometimes("trainErrorOver", "Pitch out over the length by")
                        .shownFine(),
                Result.sometimes("trainNearEnough", "Train is near enough"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("a metric stud on any lathe", Map.of("thread", "M20x2.5", "length", "40 mm")),
                new Example(
                        "the same on an imperial lathe",
                        Map.of(
                                "thread", "M20x2.5",
                                "length", "40 mm",
                                "leadscrew", "8 tpi",
                                "wheels", "20,25,30,35,38,40,40,45,50,55,60,65")),
                new Example(
                        "a left-hand sluice screw",
                        Map.of("thread", "Tr 30x6 LH", "length", "200 mm", "material", "phosphor bronze")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        ScrewThread thread = asked.get(THREAD);
        Material material = asked.get(MATERIAL);
        Infeed infeed = infeed(asked, thread);
        ThreadPasses passes = ThreadPasses.of(thread, material);
        ScrewSpeed speed = ScrewSpeed.of(thread, material);
        boolean looked = asked.has(LEADSCREW) && asked.has(WHEELS);
        Optional<PitchTrain> train = looked
                ? PitchTrain.find(thread, asked.get(LENGTH), asked.get(LEADSCREW), asked.get(WHEELS))
                : Optional.empty();
        var steps = new ScrewCutSteps(thread, asked.unit(), working);
        steps.cuts(passes, material);
        steps.slide(infeed);
        steps.speed(speed, material);
        train.ifPresent(steps::train);
        steps.cautions();
        String advice = DieAdvice.of(thread, train, looked && train.isEmpty(), asked.unit());
        var answer = new Answer()
                .with("passes", passes(passes, infeed))
                .with("total", Figure.of(thread.depth()))
                .with("infeedAngle", Figure.of(infeed.angle()))
                .with("slideTotal", Figure.of(infeed.along(thread.depth())))
                .with("helixAngle", Figure.of(thread.helixAngle()))
                .with("rpm", Figure.rpm(speed.rpm().rpm()))
                .with("advice", Figure.of(advice));
        train.ifPresent(
                found -> answer.with("train", Figure.of(found.cut().train().toString()))
                        .with("trainErrorOver", Figure.of(found.errorOver()))
                        .with("trainNearEnough", Figure.of(found.isNearEnough())));
        return answer;
    }

    private static Infeed infeed(Asked asked, ScrewThread thread) {
        Infeed infeed = asked.find(INFEED).orElseGet(() -> Infeed.usual(thread));
        if (infeed.angle().degrees() > thread.form().includedAngle().half().degrees()) {
            throw Refusal.of(
                    INFEED,
                    "the slide may be set over by no more than half the angle between the flanks, or the far flank is"
                            + " cut away: for " + thread + " that is "
                            + thread.form().includedAngle().half().degrees() + "°.");
        }
        return infeed;
    }

    private static Figure passes(ThreadPasses passes, Infeed infeed) {
        return Figure.many(passes.cuts().stream()
                .map(cut -> new Answer()
                        .with("depthSoFar", Figure.of(cut.depthSoFar()))
                        .with("step", Figure.of(cut.step()))
                        .with("slide", Figure.of(infeed.along(cut.depthSoFar())))
                        .asGroup())
                .toList());
    }
}
