package chargehand.trade.cutting;

import chargehand.measure.Length;
import chargehand.measure.Pitch;
import chargehand.measure.Power;
import chargehand.measure.Pressure;
import chargehand.measure.Ratio;
import chargehand.measure.SpindleSpeed;
import chargehand.trade.material.Kienzle;
import chargehand.trade.material.Material;
import chargehand.trade.material.MaterialKind;
import chargehand.trade.material.ToolMaterial;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.List;
import java.util.Optional;

/** Speed, feed, passes, force, power, time and finish of a cut. */
@AutoService(Sum.class)
public final class CutSum implements Sum {
    private static final int MOST_STEPS = 100;

    /** On the diameter: what a cut may leave the work larger by before it is its stiffness that limits (common practice). */
    private static final Length ROUGH = Length.mm(0.1);

    private static final Length FINE = Length.mm(0.02);
    private static final Source AS_GIVEN = new Source("as given");

    private static final Kind<Length> SIZE = Kinds.where(
            Kinds.SIZE,
            size -> !size.isMoreThan(Length.mm(5_000)) && !size.isLessThan(Length.mm(0.05)),
            "must lie between 0.05 mm and 5 m");
    private static final Kind<Length> FEED = Kinds.where(
            Kinds.SIZE,
            feed -> !feed.isMoreThan(Length.mm(10_000)) && !feed.isLessThan(Length.mm(0.001)),
            "is no feed: 0.001 mm to 10 m");
    private static final Kind<SpindleSpeed> SPEED = Kinds.where(
            Kinds.SPINDLE_SPEED,
            speed -> speed.rpm() >= 1 && speed.rpm() <= 100_000,
            "must lie between 1 and 100000 rpm");
    private static final Kind<Power> MOTOR = Kinds.where(
            Kinds.POWER, power -> power.watts() >= 1 && power.watts() <= 1e6, "must lie between 1 W and 1000 kW");
    private static final Kind<Pitch> PITCH = Kinds.where(
            Kinds.PITCH, pitch -> pitch.inMm() >= 0.1 && pitch.inMm() <= 50, "must lie between 0.1 and 50 mm");

    private static final Field<Operation> KIND = Field.required(
            "kind", "Kind of cut", CutKinds.OPERATION, "turn, face, bore, drill, ream, tap, part, mill or thread");
    private static final Field<Material> MATERIAL =
            Field.required("material", "Material", MaterialKind.MATERIAL, "EN8, 316, LG2, brass");
    private static final Field<ToolMaterial> TOOL =
            Field.optional("tool", "Tool", CutKinds.TOOL, "hss", "hss or carbide");
    private static final Field<Length> DIAMETER =
            Field.required("diameter", "Diameter", SIZE, "50 mm: of the work, the hole, or the milling cutter");
    private static final Field<Length> DEPTH = Field.optional(
            "depth", "Depth", SIZE, "3 mm on the radius, all there is to take off; for a hole, how deep it is");
    private static final Field<Length> WIDTH =
            Field.optional("width", "Width", SIZE, "3 mm: of the parting tool, or of the milled cut");
    private static final Field<Integer> TEETH =
            Field.optional("teeth", "Teeth of the cutter", Kinds.count(1, 100), "4, for milling");
    private static final Field<Length> LENGTH =
            Field.optional("length", "Length", SIZE, "120 mm along the feed; gives the time");
    private static final Field<Pitch> THREAD_PITCH =
            Field.optional("pitch", "Pitch", PITCH, "1.5 mm or 14 tpi, for tapping and screw-cutting");
    private static final Field<List<SpindleSpeed>> SPEEDS = Field.optional(
            "speeds", "Speeds of the machine", Kinds.listOf(SPEED, MOST_STEPS), "40, 70, 120, 200, 350, 600 rpm");
    private static final Field<List<Length>> FEEDS = Field.optional(
            "feeds",
            "Feeds of the machine",
            Kinds.listOf(FEED, MOST_STEPS),
            "0.05, 0.1, 0.2 for one turn; for a mill, mm or inches in a minute");
    private static final Field<Power> POWER = Field.optional("power", "Motor", MOTOR, "2 hp or 1.5 kW");
    private static final Field<Length> FINISH =
            Field.optional("finish", "Finish, Ra", new FinishKind(), "1.6 (µm): makes it a finishing cut");
    private static final Field<Pressure> CUTTING_FORCE = Field.optional(
            "cuttingForce",
            "Cutting force on a chip of 1 mm², kc1.1",
            Kinds.where(
                    Kinds.PRESSURE,
                    force -> force.megapascals() >= 50 && force.megapascals() <= 20_000,
                    "must lie between 50 and 20000 MPa"),
            "1500 MPa from a catalogue or a test; left out, that of the material");
    private static final Field<Ratio> THINNING = Field.optional(
            "thinning",
            "How it grows as the chip gets thinner, mc",
            Kinds.where(Kinds.NUMBER, mc -> mc.value() >= 0 && mc.value() < 1, "must lie between 0 and 1"),
            "0.22, with the cutting force; left out, 0 for a force that stays the same");
    private static final Field<Length> STANDS_OUT = Field.optional(
            "standsOut", "How far the work stands out of the chuck", SIZE, "100 mm; tells how far turning bends it");
    private static final Field<Boolean> CENTRE =
            Field.optional("centre", "Whether its other end runs on a centre", Kinds.YES_NO, "no", "yes or no");
    private static final Field<Length> NOSE =
            Field.optional("nose", "Nose radius", SIZE, "0.4 mm; gives the finish left in theory");

    @Override
    public String name() {
        return "cut";
    }

    @Override
    public String title() {
        return "Speeds and feeds";
    }

    @Override
    public String purpose() {
        return "Gives speed, feed, passes, force, power, time and finish of a cut, on the machine's own steps.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(
                KIND,
                MATERIAL,
                TOOL,
                DIAMETER,
                DEPTH,
                WIDTH,
                TEETH,
                LENGTH,
                THREAD_PITCH,
                SPEEDS,
                FEEDS,
                POWER,
                FINISH,
                NOSE,
                CUTTING_FORCE,
                THINNING,
                STANDS_OUT,
                CENTRE);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("speed", "Surface speed that suits"),
                Result.always("rpm", "Revolutions for it"),
                Result.always("chosen", "Chosen from the machine's steps").shownFine(),
                Result.always("feed", "Feed for one turn").shownFine(),
                Result.always("feedRate", "Feed in a minute"),
                Result.always("passes", "Passes"),
                Result.always("depths", "Depth of each pass").shownFine(),
                Result.sometimes("force", "Force on the tool"),
                Result.sometimes("torque", "Torque at the spindle"),
                Result.sometimes("power", "Power at the edge"),
                Result.sometimes("motor", "Power the motor gives for it"),
                Result.sometimes("time", "Cutting time"),
                Result.sometimes("roughness", "Finish left in theory, Ra").shownFine(),
                Result.sometimes("bends", "How far the work bends from the tool")
                        .shownFine(),
                Result.sometimes("larger", "How much larger it turns there, on diameter")
                        .shownFine(),
                Result.always("limit", "What limits it"));
    }

    @Override
    public List<Example> examples() {
        return CutExamples.list();
    }

    @Override
    public Answer work(Asked asked, Working working) {
        CutSettings settings = plan(cut(asked), working);
        if (settings.load().isEmpty()) {
            working.caution("No cutting force is published for this material, so none is given: begin gently.");
        }
        working.caution("These are starting values for a sound set-up: long, slender or loosely held work takes less."
                + " Guards on, chips away from hands, key out of the chuck.");
        Optional<Length> larger = asked.find(STANDS_OUT).flatMap(far -> larger(far, settings, asked, working));
        boolean bent = larger.filter(much -> much.isMoreThan(asked.has(FINISH) ? FINE : ROUGH))
                .isPresent();
        if (bent) {
            working.caution(
                    "The work bends more than is good: bring up a centre or a steady, hold it shorter, or take a"
                            + " lighter cut with a sharp tool of small nose. Slender work can climb over the tool and be thrown.");
        }
        Answer answer = CutFigures.of(settings, bent ? CutSettings.Limit.STIFFNESS : settings.limit());
        larger.ifPresent(much -> answer.with("bends", Figure.of(much.half())).with("larger", Figure.of(much)));
        return answer;
    }

    /** How much larger work that bends is turned; empty where no cutting force is published for its material. */
    private static Optional<Length> larger(Length far, CutSettings settings, Asked asked, Working working) {
        if (asked.get(KIND) != Operation.TURN) {
            throw Refusal.of(STANDS_OUT, "bending is reckoned for turning alone: leave this out.");
        }
        var work = new WorkBending(asked.get(DIAMETER), far, asked.get(CENTRE));
        return settings.load()
                .map(load -> work.by(
                                load.force(), asked.get(MATERIAL).physical().elasticModulus(), working)
                        .times(2));
    }

    private static CutSettings plan(Cut cut, Working working) {
        try {
            return CutPlan.of(cut, working);
        } catch (CannotCut cannot) {
            throw new Refusal(cannot.fact(), cannot.say());
        }
    }

    /** The material, cut by the law that the asker brings if there is one. */
    private static Material material(Asked asked) {
        if (asked.has(THINNING) && !asked.has(CUTTING_FORCE)) {
            throw Refusal.of(CUTTING_FORCE, "is needed with its thinning: write it as 1500 MPa, or leave both out.");
        }
        double mc = asked.find(THINNING).map(Ratio::value).orElse(0.0);
        return asked.find(CUTTING_FORCE)
                .map(force -> asked.get(MATERIAL).cutBy(new Kienzle(force, mc, AS_GIVEN)))
                .orElseGet(() -> asked.get(MATERIAL));
    }

    private static Cut cut(Asked asked) {
        var machine = new Cut.Machine(
                asked.find(SPEEDS).orElse(List.of()), asked.find(FEEDS).orElse(List.of()), asked.find(POWER));
        return new Cut(
                asked.get(KIND),
                material(asked),
                asked.get(TOOL),
                asked.get(DIAMETER),
                asked.find(DEPTH),
                asked.find(WIDTH),
                asked.find(TEETH),
                asked.find(LENGTH),
                asked.find(THREAD_PITCH),
                asked.find(FINISH),
                asked.find(NOSE),
                machine);
    }
}
