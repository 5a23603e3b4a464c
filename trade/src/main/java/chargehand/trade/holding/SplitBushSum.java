package chargehand.trade.holding;

import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.measure.Ratio;
import chargehand.measure.Torque;
import chargehand.trade.material.Material;
import chargehand.trade.material.MaterialKind;
import chargehand.trade.sum.Answer;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Sum;
import chargehand.trade.sum.Working;
import com.google.auto.service.AutoService;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A split bush to hold work that the jaws would mark or cannot hold true. */
@AutoService(Sum.class)
public final class SplitBushSum implements Sum {
    /** How much more than the cutting torque must be held: interrupted cuts and worn jaws. */
    static final double IN_HAND = 2;

    private static final double LEAST_WALL = 1;
    private static final double MOST_CLEARANCE = 0.05;

    private static final Kind<Length> SIZE = Kinds.where(
            Kinds.SIZE,
            size -> size.mm() >= 1 && size.mm() <= 2_000,
            "is not a size held in a chuck, from 1 mm to 2 m");

    private static final Field<Length> WORK =
            Field.required("work", "Diameter held", SIZE, "38 mm: the work, or over the tips of its teeth");
    private static final Field<Length> HOLE = Field.optional(
            "hole", "Outside of the bush", SIZE, "50 mm: the hole it goes into or the bar it is made from");
    private static final Field<Length> LENGTH = Field.required("length", "Length held", SIZE, "40 mm");
    private static final Field<Material> MATERIAL =
            Field.required("material", "Bush material", MaterialKind.MATERIAL, "mild steel, brass, gunmetal");
    private static final Field<Length> CLEARANCE =
            Field.optional("clearance", "Hole larger than the work by", Kinds.SIZE, "0.1 mm", "0.1 mm, on diameter");
    private static final Field<Torque> TORQUE = Field.optional(
            "torque",
            "Torque of the cut",
            Kinds.where(
                    Kinds.TORQUE,
                    torque -> torque.newtonMetres() > 0 && torque.newtonMetres() <= 1e6,
                    "must be more than nothing, and less than any lathe turns"),
            "30 Nm; left out, only what it holds is told");
    private static final Field<Ratio> FRICTION = Field.optional(
            "friction",
            "Friction",
            Kinds.where(
                    Kinds.NUMBER,
                    friction -> friction.value() >= 0.02 && friction.value() <= 1,
                    "is not the friction between metals, from 0.02 to 1"),
            "0.12",
            "0.12 for turned metal with traces of oil, 0.2 dry");
    private static final Field<Force> GRIP = Field.optional(
            "grip",
            "Push of all jaws together",
            Kinds.where(
                    Kinds.FORCE,
                    force -> force.newtons() >= 10 && force.newtons() <= 1e6,
                    "is not the push of a chuck, from 10 N to 1000 kN"),
            "10 kN",
            "10 kN, a small chuck closed by hand; the maker's figure is better");

    @Override
    public String name() {
        return "split-bush";
    }

    @Override
    public String title() {
        return "Split bush";
    }

    @Override
    public String purpose() {
        return "Gives the sizes of a split bush for holding work in a chuck, and whether it holds the torque of the cut.";
    }

    @Override
    public List<Field<?>> fields() {
        return List.of(WORK, HOLE, LENGTH, MATERIAL, CLEARANCE, TORQUE, FRICTION, GRIP);
    }

    @Override
    public List<Result> results() {
        return List.of(
                Result.always("bore", "Bore"),
                Result.always("outside", "Outside"),
                Result.always("wall", "Wall"),
                Result.always("slit", "Slit"),
                Result.always("closes", "Closes until shut, on diameter"),
                Result.always("closingStress", "Stress in it when closed on the work"),
                Result.always("closingForce", "Push that closing takes"),
                Result.always("pressure", "Pressure on the work"),
                Result.always("torqueHeld", "Torque at which the work slips"),
                Result.always("sound", "Sound"),
                Result.always("why", "Why"));
    }

    @Override
    public List<Example> examples() {
        return List.of(
                new Example(
                        "a pinion held over its teeth",
                        Map.of("work", "54 mm", "length", "40 mm", "material", "mild steel", "torque", "12 Nm")),
                new Example(
                        "a stub in an existing hole",
                        Map.of(
                                "work",
                                "3/4 in",
                                "hole",
                                "1 in",
                                "length",
                                "1 1/2 in",
                                "material",
                                "brass",
                                "unit",
                                "in")),
                new Example(
                        "too stiff to close",
                        Map.of(
                                "work",
                                "20 mm",
                                "hole",
                                "60 mm",
                                "length",
                                "40 mm",
                                "material",
                                "cast iron",
                                "clearance",
                                "0.5 mm",
                                "torque",
                                "60 Nm")));
    }

    @Override
    public Answer work(Asked asked, Working working) {
        SplitBush bush = bush(asked);
        double push = asked.get(GRIP).newtons();
        double friction = asked.get(FRICTION).value();
        SplitBushWorking write = new SplitBushWorking(bush, asked.unit(), working);
        write.sizes(asked.has(HOLE));
        write.closing();
        write.holding(push, friction);
        List<String> faults = faults(bush, push, friction, asked);
        faults.forEach(working::caution);
        warn(bush, working);
        return answer(bush, push, friction)
                .with("sound", Figure.of(faults.isEmpty()))
                .with("why", Figure.of(why(bush, faults, asked)));
    }

    private static Answer answer(SplitBush bush, double push, double friction) {
        return new Answer()
                .with("bore", Figure.of(Length.mm(bush.bore())))
                .with("outside", Figure.of(Length.mm(bush.outside())))
                .with("wall", Figure.of(Length.mm(bush.wall())))
                .with("slit", Figure.of(Length.mm(bush.slit())))
                .with("closes", Figure.of(Length.mm(bush.closes())))
                .with("closingStress", Figure.of(Pressure.megapascals(bush.closingStress())))
                .with("closingForce", Figure.of(Force.newtons(bush.closingForce())))
                .with("pressure", Figure.of(Pressure.megapascals(bush.pressureOnWork(push))))
                .with("torqueHeld", Figure.of(Torque.newtonMetres(bush.torqueHeld(push, friction) / 1000)));
    }

    private static SplitBush bush(Asked asked) {
        double work = asked.get(WORK).mm();
        double clearance = asked.get(CLEARANCE).mm();
        if (clearance > MOST_CLEARANCE * work) {
            throw Refusal.of(
                    CLEARANCE,
                    "a bush closed so far no longer fits round the work: at most "
                            + Figures.atMost(2, MOST_CLEARANCE * work) + " mm here.");
        }
        double wall =
                asked.find(HOLE).map(hole -> (hole.mm() - work - clearance) / 2).orElse(SplitBush.usualWall(work));
        if (wall < LEAST_WALL) {
            throw Refusal.of(HOLE, "this leaves less than 1 mm of wall: take a larger outside.");
        }
        if (wall > work) {
            throw Refusal.of(HOLE, "a wall thicker than the work is wide will not close: take a smaller outside.");
        }
        return new SplitBush(work, clearance, wall, asked.get(LENGTH).mm(), asked.get(MATERIAL));
    }

    private static List<String> faults(SplitBush bush, double push, double friction, Asked asked) {
        var faults = new ArrayList<String>();
        if (bush.closingStress() > bush.allowedStress()) {
            faults.add("Closing would strain it past what " + bush.material().name()
                    + " bears: less clearance, or a thinner wall.");
        }
        if (bush.pushOnWork(push) == 0) {
            faults.add("The jaws cannot close it on the work: less clearance, a thinner wall, or a softer metal.");
        }
        double held = bush.torqueHeld(push, friction) / 1000;
        asked.find(TORQUE)
                .filter(torque -> held < IN_HAND * torque.newtonMetres())
                .ifPresent(torque -> faults.add("The work would slip, or nearly: it holds " + Figures.four(held)
                        + " Nm and twice " + Figures.four(torque.newtonMetres())
                        + " Nm is wanted. Take lighter cuts, or support the end."));
        return faults;
    }

    private static String why(SplitBush bush, List<String> faults, Asked asked) {
        if (!faults.isEmpty()) {
            return String.join(" ", faults);
        }
        String holds = asked.has(TORQUE) ? ", and holds at least twice the torque of the cut." : ".";
        return "It closes on the work with a slit to spare and opens again, at "
                + Figures.four(100 * bush.closingStress() / bush.allowedStress()) + " % of the stress allowed" + holds;
    }

    private static void warn(SplitBush bush, Working working) {
        if (!bush.isThin()) {
            working.caution("The wall is thick for its radius: the rule for closing it is rough here.");
        }
        working.caution("Put the slit between two jaws, and bore the bush in the chuck it will be used in.");
        working.caution(
                "The grip of a worn or dry chuck is far less than its maker says, and less again at speed: try the hold"
                        + " by hand, stand clear, and let the person in charge of the machine decide.");
    }
}
