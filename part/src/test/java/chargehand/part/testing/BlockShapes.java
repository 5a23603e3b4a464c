package chargehand.part.testing;

import chargehand.part.BlockCut;
import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.Hole;
import chargehand.part.Size;
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

    /** The same block with a slot or a step in it, and now and then a counterbore. */
    Body.Block added(Body.Block block) {
        double length = block.length().length().mm();
        double width = block.width().length().mm();
        Size depth = sizes.plain(block.thickness().length().mm() * 0.4);
        BlockCut cut = random.nextBoolean()
                ? new BlockCut.Step(
                        "step 1",
                        List.of(BlockCut.Side.values()).get(random.nextInt(4)),
                        sizes.plain(width * 0.2),
                        depth)
                : random.nextBoolean()
                        ? new BlockCut.Slot(
                                "slot 1",
                                BlockCut.Way.Y,
                                sizes.plain(length / 2),
                                sizes.plain(8),
                                depth,
                                new BlockCut.Run.Open())
                        : new BlockCut.Slot(
                                "a slot",
                                BlockCut.Way.X,
                                sizes.plain(width / 2),
                                sizes.plain(6),
                                depth,
                                new BlockCut.Run.Part(sizes.plain(length * 0.2), sizes.plain(length * 0.5)));
        List<Hole> holes = new ArrayList<>(block.holes());
        if (holes.isEmpty()) {
            holes.add(new Hole.Counterbored(
                    "hole 1",
                    sizes.plain(length / 4),
                    sizes.plain(width / 2),
                    new Depth.Through(),
                    sizes.plain(5),
                    sizes.plain(9),
                    sizes.plain(block.thickness().length().mm() * 0.5)));
        }
        return new Body.Block(block.length(), block.width(), block.thickness(), holes, List.of(cut));
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
