package chargehand.method.setting;

import chargehand.method.kit.DividingHead;
import chargehand.method.plan.Settings;
import chargehand.trade.dividing.Dividing;
import chargehand.trade.dividing.IndexPlate;
import chargehand.trade.dividing.Indexed;
import chargehand.trade.dividing.PlateGears;
import chargehand.trade.dividing.Way;
import chargehand.trade.sum.Working;
import chargehand.trade.wheels.WheelSet;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** How a dividing head is set for a number of divisions: plainly where a plate serves, else with the plate geared. */
public final class Divisions {
    private record Asked(DividingHead head, int divisions) {}

    private final Map<Asked, Optional<Settings.Indexing>> found = new ConcurrentHashMap<>();

    Divisions() {}

    /** The exact setting; empty where neither the plates nor the gears owned make the division. */
    public Optional<Settings.Indexing> find(DividingHead head, int divisions) {
        return found.computeIfAbsent(
                new Asked(head, divisions),
                asked -> Indexings.plain(head, divisions, new Working()).or(() -> geared(head, divisions)));
    }

    private static Optional<Settings.Indexing> geared(DividingHead head, int divisions) {
        if (head.gears().isEmpty()) {
            return Optional.empty();
        }
        List<IndexPlate> plates = head.plates().stream()
                .map(plate -> new IndexPlate(plate.circles()))
                .toList();
        return new Dividing(head.worm(), plates, Optional.of(new WheelSet(head.gears())))
                .divide(divisions).stream()
                        .filter(Indexed::exact)
                        .map(Indexed::way)
                        .filter(Way.Differential.class::isInstance)
                        .map(Way.Differential.class::cast)
                        .findFirst()
                        .map(way -> indexing(divisions, way));
    }

    private static Settings.Indexing indexing(int divisions, Way.Differential way) {
        Way.Plain move = way.move();
        return new Settings.Indexing(
                divisions, move.turns(), move.holes(), move.circle(), Optional.of(gears(way.gears())));
    }

    private static Settings.Geared gears(PlateGears gears) {
        var drivers = new ArrayList<>(List.of(gears.spindle()));
        var driven = new ArrayList<Integer>();
        gears.stud().ifPresent(stud -> {
            drivers.add(stud.first());
            driven.add(stud.second());
        });
        driven.add(gears.worm());
        return new Settings.Geared(drivers, driven, gears.idlers());
    }
}
