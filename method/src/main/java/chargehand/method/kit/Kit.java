package chargehand.method.kit;

import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/**
 * What the shop has to work with.
 *
 * @param machines each with a name of its own
 * @param tooling what is owned beside the machines
 * @param rates what is asked of a customer outside; empty where nobody has said
 */
public record Kit(List<Machine> machines, Tooling tooling, Optional<Rates> rates) {
    public Kit {
        machines = List.copyOf(machines);
        Set<String> names = new HashSet<>();
        for (Machine machine : machines) {
            if (!names.add(machine.name().toLowerCase(Locale.ROOT))) {
                throw new IllegalArgumentException("two machines are called '" + machine.name() + "'");
            }
        }
    }

    /** A kit without rates. */
    public Kit(List<Machine> machines, Tooling tooling) {
        this(machines, tooling, Optional.empty());
    }

    /** The machine the shop calls so, whichever way it is capitalised. */
    public Optional<Machine> find(String name) {
        return machines.stream()
                .filter(machine -> machine.name().equalsIgnoreCase(name))
                .findFirst();
    }

    /** What the cross dial of a machine says it counts; empty for anything but a lathe. */
    public String crossReads(String machine) {
        return find(machine)
                .filter(Lathe.class::isInstance)
                .map(Lathe.class::cast)
                .map(lathe -> lathe.slides().crossReads().says())
                .orElse("");
    }

    public List<Lathe> lathes() {
        return listOf(Lathe.class);
    }

    public List<Mill> mills() {
        return listOf(Mill.class);
    }

    public List<RadialDrill> drills() {
        return listOf(RadialDrill.class);
    }

    public List<Saw> saws() {
        return listOf(Saw.class);
    }

    public List<Bench> benches() {
        return listOf(Bench.class);
    }

    private <M extends Machine> List<M> listOf(Class<M> kind) {
        return machines.stream().filter(kind::isInstance).map(kind::cast).toList();
    }
}
