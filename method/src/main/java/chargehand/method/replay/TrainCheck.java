package chargehand.method.replay;

import chargehand.method.kit.Lathe;
import chargehand.method.kit.ScrewCutting;
import chargehand.method.plan.Settings;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.numbers.fraction.BigFraction;

/** Whether change wheels as written are owned, can be put up, and cut the lead they are said to. */
final class TrainCheck {
    /** How near the error as written must be to the error worked out here, a plain ratio. */
    private static final double ERROR_NEAR = 1e-9;

    private final Lathe lathe;
    private final ScrewCutting cutting;
    private final FaultList faults;

    TrainCheck(Lathe lathe, FaultList faults) {
        this.lathe = lathe;
        this.cutting = lathe.screwCutting();
        this.faults = faults;
    }

    void check(Settings.Gearing gearing, ThreadToCut cut) {
        faults.unless(
                isOwned(gearing),
                Fault.Code.WRONG_TRAIN,
                () -> "the " + lathe.name() + " does not own all of " + gearing.drivers() + " and " + gearing.driven());
        boolean paired = gearing.drivers().size() == gearing.driven().size()
                && !gearing.drivers().isEmpty()
                && gearing.drivers().size() <= cutting.quadrant().mostPairs();
        faults.unless(
                paired && (gearing.drivers().size() == 1 ? isBridged(gearing) : canBeOrdered(gearing)),
                Fault.Code.WRONG_TRAIN,
                () -> "the wheels " + gearing.drivers() + " and " + gearing.driven() + " do not go on the quadrant");
        faults.unless(
                !cut.thread().leftHand() || cutting.reverses(),
                Fault.Code.WRONG_TRAIN,
                () -> "the leadscrew cannot be turned the other way for a left-hand thread");
        if (paired) {
            lead(gearing, cut);
        }
    }

    private boolean isOwned(Settings.Gearing gearing) {
        var left = new ArrayList<>(cutting.wheels());
        return all(gearing).stream().allMatch(left::remove);
    }

    private static List<Integer> all(Settings.Gearing gearing) {
        var all = new ArrayList<>(gearing.drivers());
        all.addAll(gearing.driven());
        return all;
    }

    /** A single pair is joined by any spare wheel between, or meshes by itself. */
    private boolean isBridged(Settings.Gearing gearing) {
        int driver = gearing.drivers().getFirst();
        int driven = gearing.driven().getFirst();
        var spare = new ArrayList<>(cutting.wheels());
        all(gearing).forEach(spare::remove);
        return meshes(driver, driven)
                || spare.stream().anyMatch(idler -> meshes(driver, idler) && meshes(idler, driven));
    }

    private boolean meshes(int driver, int driven) {
        return cutting.quadrant().meshes(driver, driven);
    }

    /** Whether the drivers can be put with the driven wheels in some order so that every pair meshes. */
    private boolean canBeOrdered(Settings.Gearing gearing) {
        return canPair(gearing.drivers(), gearing.driven());
    }

    private boolean canPair(List<Integer> drivers, List<Integer> driven) {
        if (drivers.isEmpty()) {
            return true;
        }
        for (int i = 0; i < driven.size(); i++) {
            var rest = new ArrayList<>(driven);
            rest.subList(i, i + 1).clear();
            if (meshes(drivers.getFirst(), driven.get(i)) && canPair(drivers.subList(1, drivers.size()), rest)) {
                return true;
            }
        }
        return false;
    }

    private void lead(Settings.Gearing gearing, ThreadToCut cut) {
        Optional<BigFraction> box = gearbox(gearing.gearbox());
        if (!faults.unless(
                box.isPresent(),
                Fault.Code.WRONG_TRAIN,
                () -> "the gearbox has no place called '" + gearing.gearbox() + "'")) {
            return;
        }
        BigFraction turns = BigFraction.of(product(gearing.drivers()), product(gearing.driven()))
                .multiply(box.orElseThrow());
        BigFraction lead = cutting.leadscrew().mm().multiply(turns);
        double error = lead.divide(cut.thread().lead().mm()).subtract(1).doubleValue();
        faults.unless(
                Math.abs(error - gearing.error()) <= ERROR_NEAR
                        && Math.abs(error) * cut.length().mm() <= Believable.MOST_LEAD_ERROR.mm(),
                Fault.Code.WRONG_TRAIN,
                () -> "the train cuts " + lead.doubleValue() + " mm, not the lead of " + cut.thread());
    }

    private Optional<BigFraction> gearbox(String name) {
        if (cutting.gearbox().isEmpty()) {
            return name.isEmpty() ? Optional.of(BigFraction.ONE) : Optional.empty();
        }
        return cutting.gearbox().stream()
                .filter(ratio -> ratio.name().equals(name))
                .map(ScrewCutting.Ratio::turns)
                .findFirst();
    }

    private static BigInteger product(List<Integer> teeth) {
        return teeth.stream().map(BigInteger::valueOf).reduce(BigInteger.ONE, BigInteger::multiply);
    }
}
