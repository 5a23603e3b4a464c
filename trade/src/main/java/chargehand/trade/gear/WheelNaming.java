package chargehand.trade.gear;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * Which systems explain the readings of a wheel, and how well. Readings scatter normally about what the system gives; the
 * shift of the profile and the thinning of the teeth for backlash are unknown with a normal spread, so that every
 * probability has a closed form.
 */
final class WheelNaming {
    /** Before measuring: one wheel in seven was cut with the cutter drawn out or in. */
    private static final double SHIFTED = 0.15;

    /** Spread of the shift of such wheels, over the module. */
    private static final double SHIFT_SPREAD = 0.3;

    private static final double MOST_SHIFT = 1;

    /** Teeth are cut thin for backlash: span below the figure over the module, and its spread. */
    private static final double THINNED = 0.02;

    private static final double THINNED_SPREAD = 0.02;

    /** Blanks are turned within this of the figure, over the module. */
    private static final double BLANK_SPREAD = 0.01;

    /** Beyond five standard deviations a reading, a system is no explanation. */
    private static final double MOST_MISFIT = 25;

    private static final double LEAST_SHOWN = 0.001;
    private static final int MOST_SHOWN = 8;

    private final WheelReading reading;

    WheelNaming(WheelReading reading) {
        this.reading = reading;
    }

    /** The systems that may be, likeliest first; empty where nothing is anywhere near. */
    List<WheelCandidate> candidates() {
        var weighed = new ArrayList<Weighed>();
        for (WheelSystem system : WheelSystem.list()) {
            plain(system).ifPresent(weighed::add);
            shifted(system).ifPresent(weighed::add);
        }
        weighed.removeIf(each -> each.misfit() > MOST_MISFIT);
        double best = weighed.stream().mapToDouble(Weighed::log).max().orElse(0);
        double total = weighed.stream()
                .mapToDouble(each -> Math.exp(each.log() - best))
                .sum();
        return weighed.stream()
                .map(each -> each.candidate(Math.exp(each.log() - best) / total))
                .filter(each -> each.probability() >= LEAST_SHOWN)
                .sorted(Comparator.comparingDouble(WheelCandidate::probability).reversed())
                .limit(MOST_SHOWN)
                .toList();
    }

    private record Weighed(WheelSystem system, double shift, double off, double misfit, double log) {
        WheelCandidate candidate(double probability) {
            return new WheelCandidate(system, shift, off, misfit, probability);
        }
    }

    private Optional<Weighed> plain(WheelSystem system) {
        Scatter scatter = scatter(system, 0);
        double[] off = off(system);
        double log = Math.log(system.often() * (1 - SHIFTED)) + scatter.logDensity(off);
        return usable(system, 0)
                .map(wheel -> new Weighed(
                        system, 0, reading.outside() - wheel.outside(), scatter.misfit(off) / reading.count(), log));
    }

    private Optional<Weighed> shifted(WheelSystem system) {
        Scatter scatter = scatter(system, SHIFT_SPREAD);
        double[] off = off(system);
        double log = Math.log(system.often() * SHIFTED) + scatter.logDensity(off);
        double shift = SHIFT_SPREAD * SHIFT_SPREAD * scatter.along(perShift(system), off);
        return usable(system, shift)
                .map(wheel -> new Weighed(
                        system,
                        shift,
                        reading.outside() - wheel.outside(),
                        scatter.misfit(off) / reading.count(),
                        log));
    }

    private Optional<Spur> usable(WheelSystem system, double shift) {
        if (Math.abs(shift) > MOST_SHIFT) {
            return Optional.empty();
        }
        Spur wheel = system.wheel(reading.teeth(), shift);
        boolean spans = reading.spans().stream().allMatch(span -> wheel.spans(span.over()));
        return spans ? Optional.of(wheel) : Optional.empty();
    }

    /** What was read over what an unshifted wheel would give, outside first. */
    private double[] off(WheelSystem system) {
        Spur wheel = system.wheel(reading.teeth(), 0);
        var off = new double[reading.count()];
        off[0] = reading.outside() - wheel.outside();
        for (int i = 1; i < off.length; i++) {
            WheelReading.Span span = reading.spans().get(i - 1);
            off[i] = span.size() - wheel.span(span.over()) + THINNED * system.module();
        }
        return off;
    }

    /** How each reading grows with the shift: 2 m outside, 2 m sin α over any span. */
    private double[] perShift(WheelSystem system) {
        var grows = new double[reading.count()];
        grows[0] = 2 * system.module();
        for (int i = 1; i < grows.length; i++) {
            grows[i] = 2 * system.module() * system.pressureAngle().sin();
        }
        return grows;
    }

    private Scatter scatter(WheelSystem system, double shiftSpread) {
        double[] grows = perShift(system);
        double read = reading.slack() / 2;
        var spread = new double[grows.length][grows.length];
        for (int i = 0; i < grows.length; i++) {
            for (int j = 0; j < grows.length; j++) {
                double together = shiftSpread * shiftSpread * grows[i] * grows[j];
                double thinned = i > 0 && j > 0 ? square(THINNED_SPREAD * system.module()) : 0;
                double own = i == j ? read * read : 0;
                spread[i][j] = together + thinned + own;
            }
        }
        spread[0][0] += square(BLANK_SPREAD * system.module());
        return new Scatter(spread);
    }

    private static double square(double number) {
        return number * number;
    }
}
