package chargehand.trade.packer;

import java.util.List;
import java.util.Optional;

/** Judges the tests of one valve. */
final class Setting {
    /** Two tests off the line by chance once in four hundred; each further one allows a little more. */
    private static final double MISFIT = 9;

    private static final double MISFIT_EACH = 2.4;

    /** Tests with one packer that differ by more than this many standard deviations of a difference do not repeat. */
    private static final double REPEATS = 3;

    /** With less chance than this the gauge or the step is too coarse for the tolerance. */
    private static final double LEAST_CHANCE = 0.02;

    private static final double ALIKE_MM = 1e-4;

    private final ValveModel model;
    private final PackerAim aim;
    private final List<Trial> trials;

    Setting(ValveModel model, PackerAim aim, List<Trial> trials) {
        this.model = model;
        this.aim = aim;
        this.trials = List.copyOf(trials);
    }

    Verdict verdict() {
        Optional<Verdict> stop = passed().or(this::notRepeating).or(this::notFitting);
        if (stop.isPresent()) {
            return stop.get();
        }
        Trial last = trials.getLast();
        NextPacker kept = NextPacker.with(model, aim, last.packer());
        if (aim.isInside(last.lifted()) && aim.isInside(kept.reads().mean())) {
            return new Verdict.Inside(kept);
        }
        return NextPacker.of(model, aim, last.packer())
                .<Verdict>map(Verdict.GoOn::new)
                .orElseGet(
                        () -> new Verdict.Stop("No packer is sure to stay under the pressure never to be exceeded: the"
                                + " target lies too near it for this gauge, or too little is known of the spring."));
    }

    private Optional<Verdict> passed() {
        return trials.stream()
                .filter(trial -> trial.lifted() > aim.most())
                .findFirst()
                .map(trial -> new Verdict.Stop(
                        "A test passed the pressure never to be exceeded: stop, and let the competent person look at"
                                + " the valve, the gauge and whatever was under that pressure."));
    }

    private Optional<Verdict> notRepeating() {
        for (Trial one : trials) {
            for (Trial other : trials) {
                boolean alike = Math.abs(one.packer() - other.packer()) < ALIKE_MM;
                double apart = Math.abs(one.lifted() - other.lifted()) / model.reading() / Math.sqrt(2);
                if (alike && apart > REPEATS) {
                    return Optional.of(new Verdict.Stop(
                            "The same packer did not lift at the same pressure twice: look for a sticking spindle, dirt on"
                                    + " the seat or a leaking seat before testing on."));
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Verdict> notFitting() {
        if (model.rate().mean() > 0 != aim.adds()) {
            return Optional.of(
                    new Verdict.Stop("The pressure goes the wrong way with the packer: check which way it acts"
                            + " and what was written down."));
        }
        int over = trials.size() - 1;
        if (over < 1 || model.misfit() <= MISFIT + MISFIT_EACH * (over - 1)) {
            return Optional.empty();
        }
        return Optional.of(
                new Verdict.Stop("The readings do not lie on a line that this spring can give: look for sticking, a"
                        + " leaking seat, coils that touch, or a slip in writing down, before testing on."));
    }

    /** How many more tests to expect: the next, and after a miss those of a valve that is then well known. */
    double testsLeft(NextPacker next) {
        double rounding = aim.step() * Math.abs(model.rate().mean()) / Math.sqrt(12);
        var known = new Bell(aim.target(), Math.hypot(Math.sqrt(2) * model.reading(), rounding));
        double then = Math.max(LEAST_CHANCE, known.between(aim.low(), aim.high()));
        return 1 + (1 - next.chance()) / then;
    }
}
