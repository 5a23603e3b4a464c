package chargehand.part.testing;

import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Section;
import java.util.List;
import java.util.Random;

/** Random turned parts: an outside, and what fits inside and across it. */
final class TurnedShapes {
    private final Random random;
    private final Sizes sizes;

    TurnedShapes(Random random, Sizes sizes) {
        this.random = random;
        this.sizes = sizes;
    }

    Body.Turned body() {
        List<Section> outside = new OutsideShapes(random, sizes).sections();
        var plain = new Body.Turned(outside, List.of(), List.of());
        List<Bore> inside = random.nextInt(3) == 0 ? List.of() : new InsideShapes(random, sizes, plain).bores();
        List<Across> across = random.nextInt(2) == 0 ? List.of() : new AcrossShapes(random, sizes, plain).features();
        return new Body.Turned(outside, inside, across);
    }
}
