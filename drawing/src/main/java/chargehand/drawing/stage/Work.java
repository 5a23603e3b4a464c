package chargehand.drawing.stage;

import chargehand.part.Across;
import chargehand.part.shape.Profile;
import chargehand.part.shape.Solid;
import java.util.List;

/**
 * The work, before and after a set-up.
 *
 * @param outer the outside when the set-up is done
 * @param inner the hollow when it is done, over the same positions; 0 where it is solid
 * @param stock the outside before it is begun, over its own positions
 * @param threads those that are on the work when it is done
 * @param flats those that are on the work when it is done
 * @param across the holes and keyways that are in the work when it is done
 */
public record Work(
        Profile outer,
        Profile inner,
        Profile stock,
        List<Solid.ThreadPlace> threads,
        List<Solid.FlatsPlace> flats,
        List<Across> across) {
    public Work {
        threads = List.copyOf(threads);
        flats = List.copyOf(flats);
        across = List.copyOf(across);
        if (!outer.start().equals(inner.start()) || !outer.end().equals(inner.end())) {
            throw new IllegalArgumentException("outside and hollow run over the same positions");
        }
    }

    /** Work with nothing on it but what turns. */
    public static Work of(Profile outer, Profile inner, Profile stock) {
        return new Work(outer, inner, stock, List.of(), List.of(), List.of());
    }
}
