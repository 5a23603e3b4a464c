package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.LatheTool;
import chargehand.method.kit.ScrewCutting;
import chargehand.method.kit.Tooling;
import chargehand.trade.thread.ScrewThread;
import chargehand.trade.wheels.CutPitch;
import chargehand.trade.wheels.Quadrant;
import chargehand.trade.wheels.Tried;
import chargehand.trade.wheels.WheelSet;
import chargehand.trade.wheels.WheelTrains;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import org.apache.commons.numbers.fraction.BigFraction;

/** How an outside or inside thread can be cut with what the shop owns: the die or tap, and the lathe's own gearing. */
public final class ThreadWays {
    /** The pitch error over the length of a thread that is let pass (common practice for general work). */
    private static final Length MOST_ERROR = Length.mm(0.03);

    /** The longest thread cut with a die led from the tailstock, in diameters. */
    private static final double LONGEST_FOR_DIE = 3;

    private static final int TRAINS_WEIGHED = 3;

    private final Tooling tooling;
    private final Map<String, Optional<CutPitch>> trains = new ConcurrentHashMap<>();
    private final Divisions divisions = new Divisions();

    public ThreadWays(Tooling tooling) {
        this.tooling = tooling;
    }

    /** How dividing heads are set, each division found once. */
    public Divisions divisions() {
        return divisions;
    }

    /** Whether a die is owned and can be led from the tailstock for a thread so long. */
    public boolean hasDie(ScrewThread thread, Length length) {
        return tooling.findDie(thread.designation()).isPresent()
                && tooling.tailstockDieHolder()
                        .filter(largest -> !thread.major().isMoreThan(largest))
                        .isPresent()
                && length.over(thread.major()) <= LONGEST_FOR_DIE;
    }

    public boolean hasTap(ScrewThread thread) {
        return tooling.holeTools().findTap(thread.designation()).isPresent();
    }

    /** The best train for a thread so long on a lathe, if one is near enough and a tool of its form is owned. */
    public Optional<CutPitch> train(Lathe lathe, ScrewThread thread, Length length) {
        if (screwCutter(thread).isEmpty()
                || (thread.leftHand() && !lathe.screwCutting().reverses())) {
            return Optional.empty();
        }
        return bestTrain(lathe, thread)
                .filter(cut -> !cut.errorOver(length).abs().isMoreThan(MOST_ERROR));
    }

    /** The train nearest the pitch, however far off. */
    Optional<CutPitch> bestTrain(Lathe lathe, ScrewThread thread) {
        String key = lathe.name() + " " + thread.lead();
        return trains.computeIfAbsent(key, name -> search(lathe.screwCutting(), thread));
    }

    private static Optional<CutPitch> search(ScrewCutting cutting, ScrewThread thread) {
        BigFraction wanted = CutPitch.ratio(thread.lead(), cutting.leadscrew());
        List<BigFraction> gearbox =
                cutting.gearbox().stream().map(ScrewCutting.Ratio::turns).toList();
        var search = WheelTrains.of(new WheelSet(cutting.wheels()))
                .withPairs(Math.min(2, cutting.quadrant().mostPairs()))
                .within(new Quadrant(
                        cutting.quadrant().leastTogether(), cutting.quadrant().mostTogether()));
        var geared = gearbox.isEmpty() ? search : search.withGearbox(gearbox);
        return geared.best(wanted, TRAINS_WEIGHED).stream()
                .min(Tried.BEST_FIRST)
                .map(tried -> CutPitch.of(tried.train(), cutting.leadscrew(), thread.lead()));
    }

    /** The screw-cutting tool of a thread's angle and pitch. */
    public Optional<LatheTool.ScrewCutter> screwCutter(ScrewThread thread) {
        return tooling.latheTools(LatheTool.ScrewCutter.class).stream()
                .filter(tool -> tool.side() == LatheTool.Side.OUTSIDE)
                .filter(tool -> Math.abs(tool.angle().degrees()
                                - thread.form().includedAngle().degrees())
                        < 0.25)
                .filter(tool -> tool.pitches().contain(thread.pitch().length()))
                .findFirst();
    }
}
