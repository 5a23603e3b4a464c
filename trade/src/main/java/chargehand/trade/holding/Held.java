package chargehand.trade.holding;

import chargehand.measure.Figures;
import chargehand.measure.Length;
import chargehand.trade.sum.Asked;
import chargehand.trade.sum.Refusal;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Work held by its teeth or flats.
 *
 * @param toothed whether it has teeth, and not flats
 * @param count of teeth or flats
 * @param drops whether a jaw can enter a space between teeth
 */
record Held(Outline outline, boolean toothed, int count, double jawWidth, boolean drops) {
    /** Depth of a full-depth tooth over the module, and what a wheel is larger than its pitch circle by. */
    private static final double DEPTH = 2.25;

    private static final int OVER_PITCH = 2;

    static Held of(Asked asked, Working working) {
        double outside = asked.get(ChuckSum.OUTSIDE).mm();
        double jaw = asked.get(ChuckSum.JAW_WIDTH).mm();
        Optional<Integer> teeth = asked.find(ChuckSum.TEETH);
        Optional<Integer> sides = asked.find(ChuckSum.SIDES);
        if (teeth.isPresent() == sides.isPresent()) {
            throw Refusal.of(ChuckSum.TEETH, "give the teeth, or the sides of flatted work, one of the two.");
        }
        if (jaw > outside) {
            throw Refusal.of(ChuckSum.JAW_WIDTH, "a jaw wider than the work meets the next jaw: give its face.");
        }
        return teeth.isPresent()
                ? toothed(asked, teeth.get(), outside, jaw, working)
                : flatted(asked, sides.orElseThrow(), outside, jaw, working);
    }

    private static Held toothed(Asked asked, int teeth, double outside, double jaw, Working working) {
        double root = asked.find(ChuckSum.ROOT)
                .map(Length::mm)
                .orElse(Math.max(outside / 4, outside - 2 * DEPTH * outside / (teeth + OVER_PITCH)));
        if (root >= outside) {
            throw Refusal.of(ChuckSum.ROOT, "the root must be smaller than the outside.");
        }
        double gap = ChuckSum.gap(asked, teeth, outside);
        if (!asked.has(ChuckSum.GAP)) {
            working.caution("The width of the spaces is taken as three quarters of the pitch at the tips: measure it.");
        }
        working.step(
                "Pitch of the teeth at the tips",
                "π D / z",
                "π × " + Figures.atMost(3, outside) + " / " + teeth,
                Figures.atMost(3, Math.PI * outside / teeth) + " mm, of which the space takes " + Figures.atMost(3, gap)
                        + " mm",
                Source.GEOMETRY);
        double chord = outside / 2 * Math.cos(gap / outside);
        working.step(
                "A jaw across the middle of a space stops on the two tips beside it",
                "D / 2 × cos(gap / D)",
                Figures.atMost(3, outside / 2) + " × cos(" + Figures.atMost(3, gap) + " / " + Figures.atMost(3, outside)
                        + ") (radians)",
                Figures.atMost(3, chord) + " mm from the axis; on a tip " + Figures.atMost(3, outside / 2) + " mm",
                Source.GEOMETRY);
        boolean drops = jaw < outside * Math.sin(gap / outside);
        return new Held(Outline.toothed(teeth, outside, root, gap), true, teeth, jaw, drops);
    }

    private static Held flatted(Asked asked, int sides, double outside, double jaw, Working working) {
        if (asked.has(ChuckSum.ROOT) || asked.has(ChuckSum.GAP)) {
            throw Refusal.of(
                    asked.has(ChuckSum.ROOT) ? ChuckSum.ROOT : ChuckSum.GAP,
                    "flats have no root and no space: leave this out, or give the teeth.");
        }
        working.step(
                "A jaw flat on a flat stops at half the size across flats",
                "D / 2 × cos(180° / n)",
                Figures.atMost(3, outside / 2) + " × cos(180° / " + sides + ")",
                Figures.atMost(3, outside / 2 * Math.cos(Math.PI / sides)) + " mm from the axis; on a corner "
                        + Figures.atMost(3, outside / 2) + " mm",
                Source.GEOMETRY);
        return new Held(Outline.flatted(sides, outside), false, sides, jaw, false);
    }

    private String what() {
        return toothed ? "teeth" : "flats";
    }

    String why(int jaws, Chucking chucking) {
        String counts = count + " " + what();
        if (count % jaws == 0) {
            return "Each jaw meets the same part of the work, for " + jaws + " goes into " + counts
                    + ": it sits true however it is turned" + (toothed ? "; let each jaw bear on tips." : ".");
        }
        if (chucking.isEven()) {
            return jaws + " does not go into " + counts + ", but turned the best way all jaws bear alike"
                    + (toothed ? ", each on a tip; turned another way a jaw sinks between tips." : ", on their edges.");
        }
        String deep = drops ? "drops into a space" : toothed ? "sinks between two tips" : "lies on a flat";
        String other = toothed ? "bears on a tip" : "meets a corner or its edge";
        return jaws + " does not go into " + counts + ": one jaw " + deep + " where another " + other
                + ", whichever way it is turned, so it can only sit out of true.";
    }

    /** What would hold it true, the handiest first; nothing where it cannot sit otherwise than true. */
    List<Instead> instead(int jaws, Chucking chucking) {
        var instead = new ArrayList<Instead>();
        if (chucking.runoutMost() <= Chucking.ALIKE) {
            return instead;
        }
        if (chucking.isEven()) {
            instead.add(Instead.atHand("the same chuck, the work turned until all jaws bear alike, and dialled"));
        }
        for (int other : new int[] {3, 6, 4}) {
            if (other != jaws && count % other == 0) {
                instead.add(Instead.with(
                        OwnedHolding.together(other),
                        "a self-centring chuck of " + other + " jaws, which meet the same part of the work"));
            }
        }
        instead.add(Instead.with(
                OwnedHolding.FOUR_JAW, "four jaws that move singly, packed with soft metal and dialled true"));
        if (toothed) {
            instead.add(Instead.atHand("a split bush bored to the tips, closed by the chuck"));
            instead.add(Instead.with(
                    OwnedHolding.SOFT_JAWS, "soft jaws bored to the tips, wide enough to bridge several teeth"));
        } else {
            instead.add(
                    Instead.atHand("a bush with its hole to the flats, split, or a block bored and clamped on them"));
        }
        instead.add(Instead.with(OwnedHolding.MANDREL, "a mandrel, where it has a true bore"));
        return List.copyOf(instead);
    }
}
