package chargehand.trade.drill;

import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Ratio;
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
import chargehand.trade.thread.ThreadForm;
import chargehand.trade.thread.ThreadKinds;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;

/** Which drill to use before tapping a thread. */
@AutoService(Sum.class)
public final class TappingDrillSum implements Sum {
    private static final int MOST_OTHERS = 5;
    private static final double LEAST_ASKED = 0.40;
    private static final double MOST_ASKED = 1.0;

    private static final Field<ScrewThread> THREAD =
            Field.required("thread", "Thread", ThreadKinds.THREAD, "M12, 1/2 BSW, #10-32, G 3/8");
    private static final Field<Ratio> ENGAGEMENT = Field.optional(
            "engagement",
            "Thread wanted",
            Kinds.where(
                    Kinds.PERCENT,
                    part -> part.value() >= LEAST_ASKED && part.value() <= MOST_ASKED,
                    "is not between 40 % and 100 % of the thread"),
            "75 %; left out, what tables take or what the material wants");
    private static final Field<Material> MATERIAL = Field.optional(
            "material", "Material", MaterialKind.MATERIAL, "EN8, brass, stainless 316; left out, what tables take");
    private static final Field<List<Drill>> DRILLS = Field.optional(
            "drills",
            "Drills owned",
            DrillListKind.DRILLS,
            "1 to 13 by 0.5, #1 to #60, 1/16 to 1/2; left out, all listed");

    @Override
    public String name() {
        return "tapping-drill";
    }

    @Override
    public String title() {
        return "Tapping drill";
    }

    @Override
    public String purpose() {
        return "Chooses the drill for a tapped hole, and says how much thread it leaves and whether the hole is in limits.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(THREAD, ENGAGEMENT, MATERIAL, DRILLS);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("drill", "Drill"),
                Result.always("size", "Diameter of the drill").shownFine(),
                Result.always("engagement", "Thread left"),
                Result.sometimes("minorFit", "Hole within the limits of the inside thread"),
                Result.always("hole", "Hole aimed at").shownFine(),
                Result.always("others", "Others, next best first"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example("a metric thread, any listed drill", Map.of("thread", "M12")),
                new Example("a Whitworth thread in stainless", Map.of("thread", "1/2 BSW", "material", "316")),
                new Example(
                        "with the drills on the shelf",
                        Map.of("thread", "1/4-20 UNC", "drills", "1 to 13 by 0.5, 13/64, #7")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        ScrewThread thread = asked.get(THREAD);
        HoleAim aim = aim(asked, thread);
        var steps = new TappingSteps(thread, asked.unit(), working);
        steps.aim(aim);
        List<TappingChoice> choices = choices(asked, thread, aim);
        TappingChoice best = choices.getFirst();
        steps.choice(best, aim);
        var answer = new Answer()
                .with("drill", Figure.of(best.drill().designation()))
                .with("size", Figure.of(best.drill().diameter()))
                .with("engagement", Figure.percent(best.engagement() * 100));
        if (aim.most().isPresent()) {
            answer.with("minorFit", Figure.of(best.withinLimits()));
        }
        return answer.with("hole", Figure.of(aim.diameter())).with("others", others(choices, aim));
    }

    private static HoleAim aim(Asked asked, ScrewThread thread) {
        return asked.find(ENGAGEMENT)
                .map(part -> new HoleRule.Part(part.value(), "The part of the thread that was asked for", true))
                .or(() -> asked.find(MATERIAL).map(TappingDrillSum::ofMaterial))
                .map(rule -> HoleAim.of(thread, rule))
                .orElseGet(() -> HoleAim.usual(thread));
    }

    private static HoleRule.Part ofMaterial(Material material) {
        double engagement = MaterialEngagement.of(material);
        String why = String.format(
                Locale.ROOT,
                "%s is usually tapped with about %.0f %% of the thread",
                material.name(),
                engagement * 100);
        return new HoleRule.Part(engagement, why, false);
    }

    private static List<TappingChoice> choices(Asked asked, ScrewThread thread, HoleAim aim) {
        List<Drill> drills = asked.find(DRILLS).orElseGet(() -> usual(thread));
        List<TappingChoice> choices = TappingChoice.rank(thread, aim, drills);
        if (aim.isAsked() && aim.diameter().isLessThan(aim.least())) {
            throw Refusal.of(ENGAGEMENT, tooMuch(thread, aim, asked.unit()));
        }
        if (choices.isEmpty()) {
            throw Refusal.of(DRILLS, noneWouldDo(thread, aim, asked.unit()));
        }
        return choices;
    }

    private static String tooMuch(ScrewThread thread, HoleAim aim, LengthUnit unit) {
        double most = thread.major().minus(aim.least()).over(thread.profile().fullEngagement()) * 100;
        return String.format(
                Locale.ROOT,
                "so much thread leaves the tap no room: %s has a minor diameter of %s, which is %.0f %%; ask for less.",
                thread,
                LengthText.both(aim.least(), unit),
                most);
    }

    private static String noneWouldDo(ScrewThread thread, HoleAim aim, LengthUnit unit) {
        return "none of these would do for " + thread + ": the hole wants a drill of about "
                + LengthText.both(aim.diameter(), unit) + ", not less than " + LengthText.both(aim.least(), unit) + ".";
    }

    /** Unified threads are drilled by number, letter and fraction, the rest by millimetres, as their tables print them. */
    private static List<Drill> usual(ScrewThread thread) {
        if (thread.form() != ThreadForm.UNIFIED) {
            return Drills.list(DrillSeries.METRIC);
        }
        return Stream.of(DrillSeries.NUMBER, DrillSeries.LETTER, DrillSeries.FRACTION)
                .flatMap(series -> Drills.list(series).stream())
                .toList();
    }

    private static Figure others(List<TappingChoice> choices, HoleAim aim) {
        return Figure.many(choices.stream()
                .skip(1)
                .limit(MOST_OTHERS)
                .map(choice -> {
                    var other = new Answer()
                            .with("drill", Figure.of(choice.drill().designation()))
                            .with("size", Figure.of(choice.drill().diameter()))
                            .with("engagement", Figure.percent(choice.engagement() * 100));
                    return aim.most().isPresent()
                            ? other.with("minorFit", Figure.of(choice.withinLimits()))
                                    .asGroup()
                            : other.asGroup();
                })
                .toList());
    }
}
