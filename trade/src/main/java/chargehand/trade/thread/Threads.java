package chargehand.trade.thread;

import chargehand.measure.Length;
import chargehand.measure.Pitch;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** The threads that standards and practice list, single-start and right-hand. */
public final class Threads {
    /** Sizes written as decimals are rounded to a thousandth of an inch: 0.156 means 5/32. */
    private static final Length SAME_SIZE = Length.thou(0.5);

    private Threads() {}

    /** Every listed thread, series by series, in the order of the tables. */
    public static List<ScrewThread> list() {
        return Stream.of(ThreadSeries.values())
                .flatMap(series -> list(series).stream())
                .toList();
    }

    /** The listed threads of one series; none for a series whose pitch the person chooses. */
    public static List<ScrewThread> list(ThreadSeries series) {
        return Objects.requireNonNull(Listed.BY_SERIES.get(series));
    }

    /** The listed threads of one series with this major diameter: usually one, more where pitches were chosen from. */
    public static List<ScrewThread> list(ThreadSeries series, Length major) {
        return list(series).stream()
                .filter(thread -> thread.major().isWithin(SAME_SIZE, major))
                .toList();
    }

    /** Whether a standard or practice lists this diameter with this pitch, whatever its hand and starts. */
    public static boolean isListed(ScrewThread thread) {
        return list(thread.series(), thread.major()).stream()
                .anyMatch(listed -> listed.pitch().equals(thread.pitch()));
    }

    private static final class Listed {
        private static final Map<ThreadSeries, List<ScrewThread>> BY_SERIES = new EnumMap<>(ThreadSeries.class);

        static {
            for (ThreadSeries series : ThreadSeries.values()) {
                BY_SERIES.put(series, read(series));
            }
        }

        private static List<ScrewThread> read(ThreadSeries series) {
            if (series == ThreadSeries.BA) {
                return IntStream.rangeClosed(0, BritishAssociation.LAST_NUMBER)
                        .mapToObj(BritishAssociation::thread)
                        .toList();
            }
            if (series.table().isEmpty()) {
                return List.of();
            }
            return Table.read(Threads.class, series.table() + ".csv").rows().stream()
                    .map(row -> thread(series, row))
                    .toList();
        }

        private static ScrewThread thread(ThreadSeries series, Row row) {
            if (row.columns().contains("diameter")) {
                return single(
                        series, row.text("diameter"), Length.mm(row.number("diameter")), Pitch.ofMm(row.text("pitch")));
            }
            String size = row.text("size");
            Length major = row.columns().contains("major_mm")
                    ? Length.mm(row.number("major_mm"))
                    : ThreadSize.find(size).orElseThrow().diameter();
            return single(series, size, major, Pitch.ofTpi(row.text("tpi")));
        }

        private static ScrewThread single(ThreadSeries series, String size, Length major, Pitch pitch) {
            return new ScrewThread(series, size, major, pitch, 1, false);
        }
    }
}
