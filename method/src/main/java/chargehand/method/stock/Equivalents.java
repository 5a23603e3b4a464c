package chargehand.method.stock;

import chargehand.trade.material.Material;
import chargehand.trade.material.Materials;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.List;
import java.util.Optional;

/** Materials that do as well as the one asked for, by the trade's habit, each with what to mind. */
final class Equivalents {
    private static final List<Pair> ALL = Table.read(Equivalents.class, "equivalents.csv").rows().stream()
            .map(Equivalents::pair)
            .toList();

    private Equivalents() {}

    private record Pair(Material asked, Material instead, boolean anyDuty, String mind) {}

    private static Pair pair(Row row) {
        return new Pair(
                Materials.get(row.text("asked")),
                Materials.get(row.text("instead")),
                row.text("duty").equals("any"),
                row.text("mind"));
    }

    /** What to mind when {@code instead} is taken for {@code asked} in this duty; empty where it does not do. */
    static Optional<String> mind(Material asked, Material instead, Duty duty) {
        return ALL.stream()
                .filter(pair -> isKindOf(asked, pair.asked()) && isKindOf(instead, pair.instead()))
                .filter(pair -> pair.anyDuty() || !duty.isCareful())
                .map(Pair::mind)
                .findFirst();
    }

    /** Whether a material is this one or a better condition of it, such as the continuously cast stick of an alloy. */
    static boolean isKindOf(Material material, Material plain) {
        return material.name().equals(plain.name()) || material.name().startsWith(plain.name() + " ");
    }
}
