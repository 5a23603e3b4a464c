package chargehand.trade.packer;

import java.util.Optional;

/**
 * The packer to make next: of those that can be made and cannot pass the pressure never to be exceeded, the one whose test is
 * likely to cost least.
 *
 * @param thickness to make (mm)
 * @param reads what its test should read
 * @param chance of its test reading inside the tolerance
 */
record NextPacker(double thickness, Bell reads, double chance) {
    private static final int MOST_TRIED = 4_000;
    private static final int AROUND = 60;

    /** No packer is made so much thicker at once (mm). */
    private static final double MOST_CHANGE = 50;

    /** Costs this near are the same: the packer nearer to the target is then taken. */
    private static final double SAME = 1e-6;

    /** Empty where no packer at all is sure enough to stay under. */
    static Optional<NextPacker> of(ValveModel model, PackerAim aim, double last) {
        double change = (aim.target() - model.lifts(last).mean()) / model.rate().mean();
        double ideal = Math.clamp(last + change, 0, last + MOST_CHANGE);
        long from = Math.round(Math.max(0, Math.min(last, ideal)) / aim.step()) - AROUND;
        long to = Math.round(Math.max(last, ideal) / aim.step()) + AROUND;
        long stride = Math.max(1, (to - from) / MOST_TRIED);
        Optional<NextPacker> best = Optional.empty();
        for (long i = Math.max(0, from); i <= to; i += stride) {
            NextPacker next = with(model, aim, i * aim.step());
            if (aim.isSafe(next.reads())
                    && best.filter(other -> !next.isBetter(other, aim)).isEmpty()) {
                best = Optional.of(next);
            }
        }
        return best;
    }

    static NextPacker with(ValveModel model, PackerAim aim, double thickness) {
        Bell reads = model.reads(thickness);
        return new NextPacker(thickness, reads, reads.between(aim.low(), aim.high()));
    }

    private boolean isBetter(NextPacker other, PackerAim aim) {
        double cost = aim.cost(reads);
        double otherCost = aim.cost(other.reads);
        if (Math.abs(cost - otherCost) > SAME) {
            return cost < otherCost;
        }
        return Math.abs(reads.mean() - aim.target()) < Math.abs(other.reads.mean() - aim.target());
    }
}
