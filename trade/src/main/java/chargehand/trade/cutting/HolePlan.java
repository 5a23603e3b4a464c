package chargehand.trade.cutting;

import chargehand.measure.Angle;
import chargehand.measure.Figures;
import chargehand.measure.Force;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Power;
import chargehand.measure.Torque;
import chargehand.measure.WorkTime;
import chargehand.trade.cutting.CutSettings.Limit;
import chargehand.trade.cutting.CutSettings.Load;
import chargehand.trade.cutting.CutSettings.Spindle;
import chargehand.trade.material.Kienzle;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.List;
import java.util.Optional;

/** Drilling, reaming and tapping. */
final class HolePlan {
    private static final Angle HALF_POINT = Angle.degrees(59);
    private static final double FEED_OF_DIAMETER = 0.013;
    private static final double REAMER_FEED = 2;
    private static final Length FINEST_FEED = Length.mm(0.03);
    private static final double POINT_OF_DIAMETER = 0.3;
    private static final int REAMER_FLUTES = 6;
    private static final double THRUST_SHARE = 0.5;
    private static final double DEEP = 3;
    private static final double NMM_IN_NM = 1000;
    private static final Source DRILLING =
            Source.memory("Kienzle's law for two lips: T = kc f d²/8, thrust half of kc f d/2");
    private static final Source TAPPING = Source.memory("tapping torque T = kc P² d/8");

    private final Cut cut;
    private final Working working;

    HolePlan(Cut cut, Working working) {
        this.cut = cut;
        this.working = working;
    }

    CutSettings settings() {
        Spindle spindle = new SpindleChoice(cut, working).choose();
        Length feed = feed();
        Optional<Load> load = cut.material().kienzle().map(law -> load(law, spindle, feed));
        Limit limit = limit(load, spindle);
        Optional<Length> deep = cut.length().or(cut::depth);
        deep.filter(depth -> cut.operation() == Operation.DRILL && depth.over(cut.diameter()) > DEEP)
                .ifPresent(depth -> working.caution(
                        "Deeper than three diameters: draw the drill back often to clear the" + " chips."));
        return new CutSettings(
                spindle,
                feed,
                Rotation.feedRate(feed, spindle.rpm()),
                List.of(cut.diameter().half()),
                load,
                deep.map(depth -> time(depth, feed, spindle)),
                Optional.empty(),
                limit);
    }

    private Limit limit(Optional<Load> load, Spindle spindle) {
        Optional<Power> motor = cut.machine().power();
        boolean tooMuch = motor.isPresent()
                && load.filter(pull -> pull.power().compareTo(Drive.atEdge(motor.get())) > 0)
                        .isPresent();
        if (tooMuch) {
            working.caution("The motor has not the power for this feed: drill in two sizes, or feed more gently.");
            return Limit.POWER;
        }
        return SpindleChoice.limit(spindle, cut);
    }

    private Length feed() {
        if (cut.operation() == Operation.TAP) {
            return cut.pitch()
                    .orElseThrow(
                            () -> new CannotCut("pitch", "tapping needs the pitch of the thread: 1.5 mm or 14 tpi."))
                    .length();
        }
        double share = FEED_OF_DIAMETER * material() * (cut.operation() == Operation.REAM ? REAMER_FEED : 1);
        Length usual = Length.most(
                FINEST_FEED,
                Length.least(cut.diameter().times(share), cut.practice().feedRough()));
        working.step(
                "Usual feed for one turn, within " + said(FINEST_FEED) + " and "
                        + said(cut.practice().feedRough()),
                "f = share × d",
                Figures.four(share) + " × " + said(cut.diameter()),
                said(usual),
                cut.practice().source());
        Length chosen = Steps.notAbove(cut.machine().feeds(), usual);
        if (!cut.machine().feeds().isEmpty()) {
            working.fact("The machine's own feed at or below it", said(chosen), Source.COMMON_PRACTICE);
        }
        return chosen;
    }

    /** How the feed of a drill goes with the material, steel being one (common practice). */
    private double material() {
        return switch (cut.material().group()) {
            case CARBON_STEEL, ALLOY_STEEL, COPPER -> 1;
            case STAINLESS, TOOL_STEEL, TITANIUM -> 0.8;
            case CAST_IRON, BRASS, BRONZE, ALUMINIUM, PLASTIC -> 1.3;
        };
    }

    private Load load(Kienzle law, Spindle spindle, Length feed) {
        double diameter = cut.diameter().mm();
        Length thickness = thickness(feed);
        double specific = Drive.specificForce(law, thickness, working).megapascals();
        double torque = switch (cut.operation()) {
            case REAM ->
                specific
                        * feed.mm()
                        * cut.depth().orElse(cut.practice().depthRough()).mm()
                        * diameter
                        / 2;
            case TAP -> specific * feed.mm() * feed.mm() * diameter / 8;
            case DRILL, TURN, FACE, BORE, PART, MILL, THREAD -> specific * feed.mm() * diameter * diameter / 8;
        };
        write(specific, feed, torque);
        double watts = torque / NMM_IN_NM * 2 * Math.PI * spindle.rpm().rpm() / 60;
        working.step(
                "Power at the edge",
                "P = 2 π n T / 60",
                "2 π × " + Figures.four(spindle.rpm().rpm()) + " × " + Figures.four(torque / NMM_IN_NM) + " / 60",
                Figures.four(watts) + " W",
                Source.GEOMETRY);
        return new Load(force(specific, feed, torque), Torque.newtonMetres(torque / NMM_IN_NM), Power.watts(watts));
    }

    private Length thickness(Length feed) {
        return switch (cut.operation()) {
            case REAM -> feed.times(1.0 / REAMER_FLUTES);
            case TAP -> feed.times(1.0 / 8);
            case DRILL, TURN, FACE, BORE, PART, MILL, THREAD -> feed.times(HALF_POINT.sin() / 2);
        };
    }

    /** The thrust of a drill along its axis; of a reamer or tap the force at its edges. */
    private Force force(double specific, Length feed, double torque) {
        double diameter = cut.diameter().mm();
        return Force.newtons(
                cut.operation() == Operation.DRILL
                        ? THRUST_SHARE * specific * feed.mm() * diameter / 2 * HALF_POINT.sin()
                        : 2 * torque / diameter);
    }

    private void write(double specific, Length feed, double torque) {
        boolean tap = cut.operation() == Operation.TAP;
        boolean ream = cut.operation() == Operation.REAM;
        working.step(
                "Torque at the spindle",
                tap ? "T = kc P² d / 8" : ream ? "T = kc f a d / 2" : "T = kc f d² / 8",
                Figures.four(specific) + " × " + said(feed) + (ream ? " × allowance" : "") + ", d = "
                        + said(cut.diameter()),
                Figures.four(torque / NMM_IN_NM) + " N·m",
                tap ? TAPPING : DRILLING);
    }

    private WorkTime time(Length depth, Length feed, Spindle spindle) {
        Length point = cut.operation() == Operation.DRILL ? cut.diameter().times(POINT_OF_DIAMETER) : Length.ZERO;
        return CutTime.of(depth.plus(point).plus(CutPlan.RUN_IN), feed, spindle.rpm(), 1, working);
    }

    private static String said(Length length) {
        return LengthText.mm(length, LengthText.MICROMETRE);
    }
}
