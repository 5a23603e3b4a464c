package chargehand.method.wish;

import chargehand.method.kit.Bench;
import chargehand.method.kit.Chuck;
import chargehand.method.kit.ColletSet;
import chargehand.method.kit.DividingHead;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Mill;
import chargehand.method.kit.RadialDrill;
import chargehand.method.kit.Saw;
import chargehand.method.kit.Tooling;
import chargehand.method.kit.Vice;
import chargehand.method.rack.Piece;
import chargehand.method.rack.Rack;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Part;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The names that wishes may use.
 *
 * @param holders what holds work on each machine
 * @param pieces on the rack
 * @param grips the sections and bores of a turned part
 * @param features these, what goes across, and the two ends
 */
public record Names(Map<String, List<String>> holders, List<String> pieces, List<String> grips, List<String> features) {
    public Names {
        holders = new LinkedHashMap<>(holders);
        pieces = List.copyOf(pieces);
        grips = List.copyOf(grips);
        features = List.copyOf(features);
    }

    /** The names of one shop and one part. */
    public static Names of(Kit kit, Rack rack, Part part) {
        var holders = new LinkedHashMap<String, List<String>>();
        kit.machines().forEach(machine -> holders.put(machine.name(), holders(machine, kit.tooling())));
        List<String> grips = grips(part.body());
        return new Names(
                holders, rack.pieces().stream().map(Piece::name).toList(), grips, features(part.body(), grips));
    }

    private static List<String> holders(Machine machine, Tooling tooling) {
        var names = new ArrayList<String>();
        switch (machine) {
            case Lathe lathe -> {
                lathe.holders().chucks().stream().map(Chuck::name).forEach(names::add);
                lathe.holders().collets().stream().map(ColletSet::name).forEach(names::add);
                names.add(HolderName.CENTRES);
                lathe.holders().faceplate().ifPresent(largest -> names.add(HolderName.FACEPLATE));
                tooling.mandrels().stream().map(Tooling.Mandrel::name).forEach(names::add);
            }
            case Mill mill -> {
                mill.dividingHead().map(DividingHead::name).ifPresent(names::add);
                mill.vices().stream().map(Vice::name).forEach(names::add);
                mill.vees().ifPresent(range -> names.add(HolderName.VEES));
                mill.clamps().ifPresent(reach -> names.add(HolderName.CLAMPS));
            }
            case RadialDrill drill -> {
                drill.vices().stream().map(Vice::name).forEach(names::add);
                drill.vees().ifPresent(range -> names.add(HolderName.VEES));
                drill.clamps().ifPresent(reach -> names.add(HolderName.CLAMPS));
            }
            case Bench bench -> bench.vices().stream().map(Vice::name).forEach(names::add);
            case Saw saw -> {}
        }
        return names;
    }

    private static List<String> grips(Body body) {
        var names = new ArrayList<String>();
        if (body instanceof Body.Turned turned) {
            turned.outside().stream().map(Section::name).forEach(names::add);
            turned.inside().stream().map(Bore::name).forEach(names::add);
        }
        return names;
    }

    private static List<String> features(Body body, List<String> grips) {
        var names = new ArrayList<>(grips);
        if (body instanceof Body.Turned turned) {
            turned.across().stream().map(Across::name).forEach(names::add);
            names.add("end A");
            names.add("end B");
        }
        return names;
    }

    /** What holds work on a machine, in the order of the kit. */
    public List<String> holdersOn(String machine) {
        return holders.getOrDefault(machine, List.of());
    }

    /** The machine as the kit writes it. */
    Optional<String> machine(String written) {
        return known(List.copyOf(holders.keySet()), written);
    }

    Optional<String> piece(String written) {
        return known(pieces, written);
    }

    Optional<String> grip(String written) {
        return known(grips, written);
    }

    Optional<String> feature(String written) {
        return known(features, written);
    }

    /** The machines that hold work in something of this name. */
    List<String> machinesWith(String holder) {
        return holders.entrySet().stream()
                .filter(each -> known(each.getValue(), holder).isPresent())
                .map(Map.Entry::getKey)
                .toList();
    }

    /** What a machine holds work in, as the kit writes it. */
    Optional<String> holder(String machine, String written) {
        return known(holdersOn(machine), written);
    }

    private static Optional<String> known(List<String> names, String written) {
        return names.stream().filter(written.strip()::equalsIgnoreCase).findFirst();
    }
}
