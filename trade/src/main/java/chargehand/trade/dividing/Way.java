package chargehand.trade.dividing;

import org.apache.commons.numbers.fraction.BigFraction;

/** One way of moving the crank from one division to the next. */
public sealed interface Way {
    /** How far the crank goes round against the plate, exactly, in turns. */
    BigFraction crank();

    /**
     * The crank alone: so many whole turns and so many holes in one circle.
     *
     * @param turns whole turns
     * @param holes further holes, fewer than {@code circle}
     * @param circle holes in the circle used
     */
    record Plain(int turns, int holes, int circle) implements Way {
        /** The way to go so many holes in all round one circle. */
        static Plain of(int holesInAll, int circle) {
            return new Plain(holesInAll / circle, holesInAll % circle, circle);
        }

        @Override
        public BigFraction crank() {
            return BigFraction.of(turns).add(BigFraction.of(holes, circle));
        }
    }

    /**
     * First the crank in one circle, then the crank and the plate together in another circle of the same plate, the
     * plate held by a pin behind.
     *
     * @param first the crank's own move
     * @param plateHoles holes that crank and plate then go on together; negative for back
     * @param plateCircle holes in the circle that the pin behind works in
     */
    record Compound(Plain first, int plateHoles, int plateCircle) implements Way {
        @Override
        public BigFraction crank() {
            return first.crank().add(BigFraction.of(plateHoles, plateCircle));
        }

        /** How many holes are counted, whole turns and all: the fewer the better. */
        int counted() {
            return first.turns() * first.circle() + first.holes() + Math.abs(plateHoles);
        }
    }

    /**
     * The crank alone while gears from the spindle turn the plate, forwards or back, as the work goes round.
     *
     * @param move what the crank does against the moving plate
     * @param gears that turn the plate
     */
    record Differential(Plain move, PlateGears gears) implements Way {
        @Override
        public BigFraction crank() {
            return move.crank();
        }
    }
}
