package chargehand.trade.screwcutting;

import chargehand.measure.Length;
import chargehand.trade.material.Material;
import chargehand.trade.material.MaterialGroup;
import chargehand.trade.thread.ScrewThread;
import java.util.ArrayList;
import java.util.List;

/**
 * The cuts that take a thread to its depth with a single-point tool in a hand-worked lathe.
 *
 * <p>Each cut takes the same area of chip, so the depth after cut i of n is depth × √(i / n): deep at first, while the tool
 * cuts on its point only, and shallow at the end. There are as many as keep the first within what the material and a light
 * lathe stand: 0.22 mm for a pitch of 1 mm in mild steel, growing with the root of the pitch. One more goes over it without
 * feeding in. Common practice.
 *
 * @param cuts in order, each deeper than the one before save the last, which repeats it
 */
public record ThreadPasses(List<Cut> cuts) {
    /** The fewest cuts that a thread is taken in, the last one over included. */
    public static final int FEWEST = 4;

    private static final double FIRST_CUT_MM_AT_PITCH_1_MM = 0.22;

    public ThreadPasses {
        cuts = List.copyOf(cuts);
    }

    /**
     * One cut.
     *
     * @param depthSoFar on radius, after the cut
     * @param step how much deeper than the cut before; nothing for the last one over
     */
    public record Cut(Length depthSoFar, Length step) {}

    /** The cuts for a thread of this material. */
    public static ThreadPasses of(ScrewThread thread, Material material) {
        return of(thread.depth(), count(thread, firstCut(thread, material)));
    }

    /** The deepest first cut, on radius. */
    static Length firstCut(ScrewThread thread, Material material) {
        double root = Math.sqrt(thread.pitch().inMm());
        return Length.mm(FIRST_CUT_MM_AT_PITCH_1_MM * root * ease(material.group()));
    }

    /** How many cuts feed in: depth × √(1 / n) is at most the first cut. */
    static int count(ScrewThread thread, Length firstCut) {
        double cuts = Math.pow(thread.depth().over(firstCut), 2);
        return Math.max((int) Math.ceil(cuts), FEWEST - 1);
    }

    private static ThreadPasses of(Length depth, int count) {
        var cuts = new ArrayList<Cut>();
        Length before = Length.ZERO;
        for (int i = 1; i <= count; i++) {
            Length soFar = i == count ? depth : depth.times(Math.sqrt((double) i / count));
            cuts.add(new Cut(soFar, soFar.minus(before)));
            before = soFar;
        }
        cuts.add(new Cut(depth, Length.ZERO));
        return new ThreadPasses(cuts);
    }

    /** How much deeper a cut the material takes than mild steel. */
    private static double ease(MaterialGroup group) {
        return switch (group) {
            case BRASS, ALUMINIUM, PLASTIC -> 1.3;
            case BRONZE, CAST_IRON, CARBON_STEEL -> 1.0;
            case ALLOY_STEEL, COPPER -> 0.9;
            case STAINLESS, TOOL_STEEL, TITANIUM -> 0.75;
        };
    }
}
