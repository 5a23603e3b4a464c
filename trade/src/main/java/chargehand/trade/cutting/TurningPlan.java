package chargehand.trade.cutting;

import chargehand.measure.Angle;
import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.WorkTime;
import chargehand.trade.cutting.CutSettings.Limit;
import chargehand.trade.cutting.CutSettings.Load;
import chargehand.trade.cutting.CutSettings.Spindle;
import chargehand.trade.material.Kienzle;
import chargehand.trade.material.ToolMaterial;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/** Turning, facing, boring and parting off: one edge, square to the feed. */
final class TurningPlan {
    private static final Angle SQUARE = Angle.degrees(90);
    private static final Length SHALLOWEST = Length.mm(0.05);
    private static final Length NOSE_HSS = Length.mm(0.5);
    private static final Length NOSE_CARBIDE = Length.mm(0.8);
    private static final Source SCALLOPS = Source.published("geometry of the nose radius: Ra = f²/(32 r)");

    private final Cut cut;
    private final Working working;
    private final Practice practice;

    TurningPlan(Cut cut, Working working) {
        this.cut = cut;
        this.working = working;
        practice = cut.practice();
    }

    CutSettings settings() {
        Spindle spindle = new SpindleChoice(cut, working).choose();
        Length feed = feed();
        Optional<Length> pulled = depthByPower(spindle, feed);
        Length most =
                pulled.map(deep -> Length.least(deep, practice.depthRough())).orElse(practice.depthRough());
        List<Length> depths = depths(most);
        Optional<Load> load = load(spindle, feed, Collections.max(depths));
        return new CutSettings(
                spindle,
                feed,
                Rotation.feedRate(feed, spindle.rpm()),
                depths,
                load,
                time(spindle, feed, depths.size()),
                roughness(feed),
                limit(spindle, pulled));
    }

    private Limit limit(Spindle spindle, Optional<Length> pulled) {
        if (pulled.filter(deep -> deep.isLessThan(practice.depthRough())).isPresent()) {
            return Limit.POWER;
        }
        Limit bySpeed = SpindleChoice.limit(spindle, cut);
        return bySpeed == Limit.TOOL && cut.finishing() ? Limit.FINISH : bySpeed;
    }

    private Length feed() {
        Length wanted = cut.finish().map(this::feedFor).orElse(practice.feedRough());
        if (!cut.finishing()) {
            working.fact("Usual feed for one turn", said(wanted), practice.source());
        }
        Length chosen = Steps.notAbove(cut.machine().feeds(), wanted);
        if (!cut.machine().feeds().isEmpty()) {
            working.fact("The machine's own feed at or below it", said(chosen), Source.COMMON_PRACTICE);
        }
        return chosen;
    }

    private Length feedFor(Length finish) {
        Length byFinish = Roughness.feedFor(finish, nose());
        working.step(
                "Most feed that leaves the finish wanted",
                "f = √(32 Ra r)",
                "√(32 × " + Figures.four(finish.mm()) + " × " + Figures.four(nose().mm()) + ")",
                said(byFinish),
                SCALLOPS);
        return Length.least(byFinish, practice.feedRough());
    }

    private Length nose() {
        return cut.nose().orElse(cut.tool() == ToolMaterial.HSS ? NOSE_HSS : NOSE_CARBIDE);
    }

    private List<Length> depths(Length most) {
        if (cut.operation() == Operation.PART) {
            return List.of(cut.width().orElse(practice.depthRough()));
        }
        if (cut.depth().isEmpty()) {
            return List.of(cut.finishing() ? Length.least(practice.depthFinish(), most) : most);
        }
        Length depth = cut.depth().get();
        Passes.refuseTooMany(depth, most);
        if (!depth.isLessThan(cut.diameter().half()) && cut.operation() != Operation.FACE) {
            throw new CannotCut(
                    "depth",
                    "this would take off the whole of the work: the depth is on the radius, so less than"
                            + " half the diameter.");
        }
        List<Length> depths = cut.finishing()
                ? Passes.withFinish(depth, most, Length.least(practice.depthFinish(), most))
                : Passes.equal(depth, most);
        working.step(
                "Passes, none deeper than " + said(most) + (cut.finishing() ? ", with a finishing pass last" : ""),
                "passes = depth / most, rounded up",
                said(depth) + " / " + said(most),
                Integer.toString(depths.size()),
                practice.source());
        return depths;
    }

    /** The deepest pass that the motor pulls; empty where its power or the material's cutting force is not known. */
    private Optional<Length> depthByPower(Spindle spindle, Length feed) {
        Optional<Kienzle> law = cut.material().kienzle();
        if (law.isEmpty() || cut.machine().power().isEmpty()) {
            return Optional.empty();
        }
        double watts = Drive.atEdge(cut.machine().power().get()).watts();
        Force ofOneMm = Chip.turned(feed, Length.mm(1), SQUARE).force(law.get());
        double deep = watts / Chip.power(ofOneMm, spindle.speed()).watts();
        if (deep < narrowest().mm()) {
            throw new CannotCut(
                    "power",
                    "the motor has not the power for this cut at this speed: take a smaller tool, a"
                            + " finer feed or a slower speed.");
        }
        Length most = Length.mm(Math.min(deep, cut.diameter().mm()));
        working.step(
                "Deepest pass that the motor pulls, " + Figures.four(100 * Drive.EFFICIENCY)
                        + " % of its power reaching the edge",
                "a = P η / (power for 1 mm)",
                Figures.four(watts) + " W / " + Figures.four(watts / deep) + " W/mm",
                said(most),
                Source.COMMON_PRACTICE);
        return Optional.of(most);
    }

    private Length narrowest() {
        return cut.operation() == Operation.PART ? cut.width().orElse(practice.depthRough()) : SHALLOWEST;
    }

    private Optional<Load> load(Spindle spindle, Length feed, Length depth) {
        return cut.material().kienzle().map(law -> {
            Chip chip = Chip.turned(feed, depth, SQUARE);
            Drive.specificForce(law, chip.thickness(), working);
            Force force = chip.force(law);
            working.step(
                    "Force along the cut in the heaviest pass",
                    "Fc = kc × a × f",
                    Figures.four(law.specificForce(chip.thickness()).megapascals()) + " × " + said(depth) + " × "
                            + said(feed),
                    Figures.four(force.newtons()) + " N",
                    law.source());
            return Drive.load(force, cut.diameter(), spindle, working);
        });
    }

    private Optional<WorkTime> time(Spindle spindle, Length feed, int passes) {
        Optional<Length> path = switch (cut.operation()) {
            case FACE, PART -> Optional.of(cut.diameter().half());
            case TURN, BORE, THREAD, DRILL, REAM, TAP, MILL -> cut.length();
        };
        return path.map(length -> CutTime.of(length.plus(CutPlan.RUN_IN), feed, spindle.rpm(), passes, working));
    }

    private Optional<Length> roughness(Length feed) {
        if (cut.operation() == Operation.PART || (cut.nose().isEmpty() && !cut.finishing())) {
            return Optional.empty();
        }
        if (feed.isMoreThan(nose())) {
            working.caution(
                    "So coarse a feed leaves a thread, not the scallops of the nose: no finish is given for it.");
            return Optional.empty();
        }
        Length mean = Roughness.mean(feed, nose());
        working.step(
                "Finish left in theory; a built-up edge makes it up to twice as rough",
                "Ra = f² / (32 r)",
                Figures.four(feed.mm()) + "² / (32 × " + Figures.four(nose().mm()) + ")",
                Figures.four(mean.mm() * 1000) + " µm",
                SCALLOPS);
        return Optional.of(mean);
    }

    private static String said(Length length) {
        return LengthText.mm(length, LengthText.MICROMETRE);
    }
}
