package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.measure.Pitch;
import chargehand.measure.Unreadable;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** {@code M12}, {@code M12x1.25}, and with several starts {@code M16xPh3P1.5} (ISO 965-1). */
final class MetricNotation {
    static final String DECIMAL = "(\\d{0,3}\\.\\d{1,4}|\\d{1,3})";

    private static final Pattern METRIC = Pattern.compile(
            "M ?" + DECIMAL + "(?: ?X ?(?:PH ?" + DECIMAL + " ?P ?" + DECIMAL + "|" + DECIMAL + "(?: ?MM)?))?");
    private static final double LEAST_MM = 1;
    private static final double MOST_MM = 400;
    private static final double LEAST_PITCH_MM = 0.2;
    private static final double MOST_PITCH_MM = 12;

    private MetricNotation() {}

    static Optional<ScrewThread> find(String body) {
        Matcher metric = METRIC.matcher(body);
        if (!metric.matches()) {
            return Optional.empty();
        }
        Length major = Length.mm(Double.parseDouble(metric.group(1)));
        if (major.mm() < LEAST_MM || major.mm() > MOST_MM) {
            throw new Unreadable(
                    "ISO metric threads run from M1 to M400: a diameter of " + major + " is outside them.");
        }
        if (metric.group(2) != null) {
            return Optional.of(manyStarts(major, pitch(metric.group(2)), pitch(metric.group(3))));
        }
        return Optional.of(metric.group(4) == null ? coarse(major) : withPitch(major, pitch(metric.group(4))));
    }

    private static Pitch pitch(String written) {
        double mm = Double.parseDouble(written);
        if (mm < LEAST_PITCH_MM || mm > MOST_PITCH_MM) {
            throw new Unreadable("a metric pitch lies between " + LEAST_PITCH_MM + " and " + MOST_PITCH_MM + " mm, so "
                    + written + " is not one.");
        }
        return Pitch.ofMm(written);
    }

    private static ScrewThread coarse(Length major) {
        List<ScrewThread> listed = Threads.list(ThreadSeries.METRIC_COARSE, major);
        if (listed.isEmpty()) {
            String size = size(major);
            throw new Unreadable(
                    "M" + size + " has no coarse pitch in ISO 261: write its pitch too, as in M" + size + "x1.5.");
        }
        return listed.getFirst();
    }

    private static ScrewThread withPitch(Length major, Pitch pitch) {
        boolean coarse = Threads.list(ThreadSeries.METRIC_COARSE, major).stream()
                .anyMatch(listed -> listed.pitch().equals(pitch));
        ThreadSeries series = coarse ? ThreadSeries.METRIC_COARSE : ThreadSeries.METRIC_FINE;
        return new ScrewThread(series, size(major), major, pitch, 1, false);
    }

    private static ScrewThread manyStarts(Length major, Pitch lead, Pitch pitch) {
        return withPitch(major, pitch).withStarts(Starts.of(lead, pitch));
    }

    static String size(Length major) {
        return Designation.decimal(Pitch.of(major).mm());
    }
}
