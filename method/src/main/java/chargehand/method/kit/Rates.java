package chargehand.method.kit;

import java.util.List;
import java.util.Optional;

/**
 * What the shop asks of a customer outside, in its own money.
 *
 * @param source where these figures come from, such as "price list of January, page 2"
 * @param money what its money is called
 * @param hour a person's hour
 * @param machines the hours of machines, on top of the person's
 * @param material what is put on the price of material: 0.2 for a fifth
 */
public record Rates(String source, String money, double hour, List<MachineHour> machines, double material) {
    public Rates {
        machines = List.copyOf(machines);
    }

    /** What an hour on a machine costs on top of the person's. */
    public record MachineHour(String machine, double hour) {}

    /** What is put on an hour for a machine; empty where the list does not name it. */
    public Optional<Double> onTop(String machine) {
        return machines.stream()
                .filter(each -> each.machine().equalsIgnoreCase(machine))
                .map(MachineHour::hour)
                .findFirst();
    }
}
