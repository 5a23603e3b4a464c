package chargehand.trade.wear;

import chargehand.measure.Length;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What the readings of one worn diameter come to.
 *
 * @param readings at least one
 */
record Survey(List<Reading> readings) {
    Survey {
        readings = List.copyOf(readings);
    }

    /** The readings of each place, in the order they were first given. */
    private Map<String, List<Reading>> stations() {
        var stations = new LinkedHashMap<String, List<Reading>>();
        for (Reading reading : readings) {
            stations.computeIfAbsent(reading.station(), name -> new ArrayList<>())
                    .add(reading);
        }
        return stations;
    }

    List<Station> list() {
        return stations().entrySet().stream()
                .map(entry -> Station.of(entry.getKey(), entry.getValue()))
                .toList();
    }

    /** Whether every place was read in more than one direction. */
    boolean readsRound() {
        return stations().values().stream()
                .allMatch(station ->
                        station.stream().map(Reading::angle).distinct().count() > 1);
    }

    /** The place that is most out of round. */
    Station mostOval() {
        return list().stream().max(Comparator.comparing(Station::ovality)).orElseThrow();
    }

    Station largest() {
        return list().stream().max(Comparator.comparing(Station::mean)).orElseThrow();
    }

    Station smallest() {
        return list().stream().min(Comparator.comparing(Station::mean)).orElseThrow();
    }

    /** How much the mean diameter differs from place to place. */
    Length taper() {
        return largest().mean().minus(smallest().mean());
    }

    /** The reading that leaves least. */
    Reading worst() {
        return readings.stream().min(Comparator.comparing(Reading::least)).orElseThrow();
    }

    Length largestReading() {
        return readings.stream()
                .map(Reading::diameter)
                .max(Comparator.naturalOrder())
                .orElseThrow();
    }

    /**
     * One place along the work.
     *
     * @param most the largest diameter there
     * @param least the smallest
     * @param mean of all its diameters
     */
    record Station(String name, Length most, Length least, Length mean) {
        static Station of(String name, List<Reading> readings) {
            double mean = readings.stream()
                    .mapToDouble(each -> each.diameter().mm())
                    .average()
                    .orElseThrow();
            Length most = readings.stream()
                    .map(Reading::diameter)
                    .max(Comparator.naturalOrder())
                    .orElseThrow();
            Length least = readings.stream()
                    .map(Reading::diameter)
                    .min(Comparator.naturalOrder())
                    .orElseThrow();
            return new Station(name, most, least, Length.mm(mean));
        }

        Length ovality() {
            return most.minus(least);
        }
    }
}
