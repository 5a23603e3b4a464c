package chargehand.part.testing;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.Written;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Depth;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.Size;
import chargehand.part.Tolerance;
import chargehand.part.shape.Solid;
import chargehand.part.shape.Station;
import chargehand.trade.thread.ScrewThread;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random bores: a hole through or blind, and something at its mouth. */
final class InsideShapes {
    private static final List<String> THREADS = List.of("M5", "M6", "M8", "M10", "M16", "1/4 BSW", "3/8 BSW", "G 1/4");

    private final Random random;
    private final Sizes sizes;
    private final double length;
    private final double room;

    InsideShapes(Random random, Sizes sizes, Body.Turned plain) {
        this.random = random;
        this.sizes = sizes;
        this.length = plain.length().mm();
        this.room = 2 * leastOutside(plain);
    }

    private static double leastOutside(Body.Turned plain) {
        try {
            return Solid.of(plain).outerAtLeast().stations().stream()
                    .map(Station::radius)
                    .reduce(Length::least)
                    .orElseThrow()
                    .mm();
        } catch (IllegalArgumentException overlapping) {
            return 0.5;
        }
    }

    List<Bore> bores() {
        double diameter = Math.max(1, room * (0.2 + 0.4 * random.nextDouble()));
        End from = random.nextBoolean() ? End.A : End.B;
        boolean through = random.nextBoolean();
        Depth depth = through ? new Depth.Through() : new Depth.Blind(sizes.plain(length * 0.5));
        List<Bore> bores = new ArrayList<>();
        bores.add(main("bore 1", through ? End.A : from, depth, diameter));
        if (random.nextBoolean()) {
            bores.add(mouth("bore 2", from, diameter));
        }
        return bores;
    }

    private Bore main(String name, End from, Depth depth, double diameter) {
        Edge mouth = random.nextInt(3) == 0 ? new Edge.Chamfer(sizes.near(0.5), Angle.degrees(45)) : new Edge.Plain();
        return switch (random.nextInt(4)) {
            case 0 -> new Bore.Bored(name, from, depth, sizes.hole(diameter), mouth);
            case 1 -> new Bore.Reamed(name, from, depth, sizes.hole(diameter), mouth);
            case 2 -> tapped(name, from, depth);
            default -> new Bore.Drilled(name, from, depth, sizes.plain(diameter));
        };
    }

    private Bore tapped(String name, End from, Depth depth) {
        return new Bore.Tapped(name, from, depth, ScrewThread.parse(THREADS.get(random.nextInt(THREADS.size()))), "");
    }

    private Bore mouth(String name, End from, double diameter) {
        double wide = diameter + (room - diameter) * 0.4;
        if (random.nextBoolean()) {
            return new Bore.Counterbored(
                    name, from, new Depth.Blind(sizes.plain(length * 0.15)), sizes.plain(wide), new Edge.Plain());
        }
        Angle angle = Angle.degrees(random.nextBoolean() ? 90 : 60);
        Size mouth = sizes.plain(wide);
        Size to = sizes.plain(diameter);
        Length depth = Length.mm(
                mouth.length().minus(to.length()).half().mm() / angle.half().tan());
        String text = LengthText.exact(depth, sizes.unit());
        return new Bore.Coned(
                name,
                from,
                new Depth.Blind(new Size(new Written(text, depth, sizes.unit()), new Tolerance.Bracketed())),
                mouth,
                angle,
                to);
    }
}
