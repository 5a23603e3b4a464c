package chargehand.part.testing;

import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.Hole;
import chargehand.trade.thread.ScrewThread;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random blocks with a few holes each. */
final class BlockShapes {
    private static final List<String> THREADS = List.of("M6", "M8", "M10", "1/4 BSW", "3/8-16 UNC");

    private final Random random;
    private final Sizes sizes;

    BlockShapes(Random random, Sizes sizes) {
        this.random = random;
        this.sizes = sizes;
    }

    Body.Block body() {
        double length = 40 + random.nextInt(160);
        double width = 20 + random.nextInt(60);
        double thickness = 3 + random.nextInt(40);
        List<Hole> holes = new ArrayList<>();
        int count = random.nextInt(5);
        for (int i = 1; i <= count; i++) {
            holes.add(
                    hole("hole " + i, length * i / (count + 1), width * (0.35 + 0.3 * random.nextDouble()), thickness));
        }
        return new Body.Block(sizes.length(length), sizes.length(width), sizes.length(thickness), holes);
    }

    private Hole hole(String name, double x, double y, double thickness) {
        Depth depth = random.nextInt(3) == 0 ? new Depth.Blind(sizes.plain(thickness * 0.4)) : new Depth.Through();
        double diameter = 3 + random.nextInt(8);
        return switch (random.nextInt(3)) {
            case 0 -> new Hole.Drilled(name, sizes.plain(x), sizes.plain(y), depth, sizes.plain(diameter));
            case 1 -> new Hole.Reamed(name, sizes.plain(x), sizes.plain(y), depth, sizes.hole(diameter));
            default ->
                new Hole.Tapped(
                        name,
                        sizes.plain(x),
                        sizes.plain(y),
                        depth,
                        ScrewThread.parse(THREADS.get(random.nextInt(THREADS.size()))));
        };
    }
}
