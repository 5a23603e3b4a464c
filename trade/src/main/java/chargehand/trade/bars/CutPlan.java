package chargehand.trade.bars;

import chargehand.measure.Length;
import java.util.List;

/**
 * Which pieces come out of which bars.
 *
 * @param bound a cost that no plan can be below
 * @param proved whether no plan costs less
 */
record CutPlan(List<CutBar> bars, double bound, boolean proved) {
    CutPlan {
        bars = List.copyOf(bars);
    }

    Length length() {
        return bars.stream().map(bar -> bar.kind().length()).reduce(Length.ZERO, Length::plus);
    }

    Length bought() {
        return bars.stream()
                .filter(bar -> bar.kind().isBought())
                .map(bar -> bar.kind().length())
                .reduce(Length.ZERO, Length::plus);
    }

    double price() {
        return bars.stream().mapToDouble(bar -> bar.kind().price()).sum();
    }
}
