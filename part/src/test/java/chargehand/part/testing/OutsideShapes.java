package chargehand.part.testing;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.part.Edge;
import chargehand.part.Section;
import chargehand.part.Size;
import chargehand.part.Stretch;
import chargehand.trade.thread.ScrewThread;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Random outsides: steps rising from both ends to the largest section, threads at the ends, grooves behind them. */
final class OutsideShapes {
    private static final List<String> THREADS = List.of(
            "M6",
            "M8",
            "M10",
            "M12",
            "M16",
            "M20",
            "M24",
            "M30",
            "M12x1.25",
            "M20x1.5",
            "1/4 BSW",
            "3/8 BSW",
            "1/2 BSW",
            "5/8 BSF",
            "3/4 BSF",
            "1/2-13 UNC",
            "3/8-24 UNF",
            "G 1/4",
            "G 3/8",
            "G 1/2",
            "R 1/2",
            "2 BA",
            "Tr 20x4",
            "Tr 30x6 LH");

    private final Random random;
    private final Sizes sizes;
    private final List<Section> sections = new ArrayList<>();

    OutsideShapes(Random random, Sizes sizes) {
        this.random = random;
        this.sizes = sizes;
    }

    List<Section> sections() {
        double largest = 12 + random.nextInt(50);
        side(largest, true);
        middle(largest);
        side(largest, false);
        return sections;
    }

    /** The steps on one side of the largest section, in the order from A to B. */
    private void side(double largest, boolean towardsA) {
        List<Double> diameters = new ArrayList<>();
        double diameter = largest;
        for (int i = random.nextInt(3); i > 0; i--) {
            diameter *= 0.6 + 0.3 * random.nextDouble();
            diameters.add(diameter);
        }
        if (towardsA) {
            Collections.reverse(diameters);
        }
        for (int i = 0; i < diameters.size(); i++) {
            boolean atEnd = towardsA ? i == 0 : i == diameters.size() - 1;
            step(diameters.get(i), atEnd, towardsA);
        }
    }

    private void step(double diameter, boolean atEnd, boolean towardsA) {
        Optional<ScrewThread> thread = atEnd && random.nextBoolean() ? threadBelow(diameter) : Optional.empty();
        if (thread.isPresent()) {
            threaded(thread.get(), towardsA);
        } else if (random.nextInt(5) == 0) {
            cone(diameter, towardsA);
        } else {
            round(diameter, towardsA);
        }
    }

    private Optional<ScrewThread> threadBelow(double mm) {
        List<ScrewThread> fitting = THREADS.stream()
                .map(ScrewThread::parse)
                .filter(thread -> thread.major().mm() < mm && thread.major().mm() > mm / 2)
                .toList();
        return fitting.isEmpty() ? Optional.empty() : Optional.of(fitting.get(random.nextInt(fitting.size())));
    }

    private void threaded(ScrewThread thread, boolean towardsA) {
        double major = thread.major().mm();
        Edge chamfer = new Edge.Chamfer(sizes.near(thread.depth().mm() + 0.6), Angle.degrees(45));
        Edge plain = new Edge.Plain();
        Stretch stretch = towardsA
                ? stretch(major * (0.8 + random.nextDouble()), chamfer, plain)
                : stretch(major * (0.8 + random.nextDouble()), plain, chamfer);
        var groove = new Section.Groove(
                stretch(3 * thread.pitch().inMm(), plain, plain),
                Size.general(sizes.near(thread.core().mm() - 0.8)));
        boolean grooved = random.nextInt(3) > 0;
        if (grooved && !towardsA) {
            add(groove);
        }
        add(new Section.Threaded(stretch, thread, random.nextInt(4) == 0 ? "6g" : ""));
        if (grooved && towardsA) {
            add(groove);
        }
    }

    private void round(double diameter, boolean towardsA) {
        Edge free = random.nextBoolean() ? chamfer() : new Edge.Plain();
        Edge hollow = random.nextInt(3) == 0 ? new Edge.Radius(sizes.near(0.5)) : new Edge.Plain();
        double length = 6 + random.nextInt(40);
        Stretch stretch = towardsA ? stretch(length, free, hollow) : stretch(length, hollow, free);
        add(new Section.Round(stretch, sizes.shaft(diameter)));
    }

    private void cone(double diameter, boolean towardsA) {
        Size large = sizes.plain(diameter);
        Size small = sizes.plain(diameter * 0.8);
        Stretch stretch = stretch(8 + random.nextInt(30), new Edge.Plain(), new Edge.Plain());
        add(towardsA ? new Section.Cone(stretch, small, large, "") : new Section.Cone(stretch, large, small, ""));
    }

    private void middle(double largest) {
        Stretch stretch = stretch(6 + random.nextInt(40), chamfer(), chamfer());
        switch (random.nextInt(6)) {
            case 0 -> add(polygon(stretch, 6, largest));
            case 1 -> add(polygon(stretch, 4, largest));
            case 2 -> add(polygon(stretch, 8, largest));
            default -> add(new Section.Round(stretch, sizes.shaft(largest)));
        }
    }

    private Section polygon(Stretch stretch, int sides, double corners) {
        Size flats = sizes.plain(corners * Math.cos(Math.PI / sides));
        Length sharp = Section.Polygon.sharpCorners(sides, flats.length());
        Length turned = flats.length().plus(sharp.minus(flats.length()).times(0.7));
        return new Section.Polygon(stretch, sides, flats, random.nextBoolean() ? sharp : turned);
    }

    private Edge chamfer() {
        return switch (random.nextInt(3)) {
            case 0 -> new Edge.Chamfer(sizes.near(1), Angle.degrees(45));
            case 1 -> new Edge.Chamfer(sizes.near(1), Angle.degrees(30));
            default -> new Edge.Radius(sizes.near(1));
        };
    }

    private Stretch stretch(double length, Edge atA, Edge atB) {
        return new Stretch("section " + (sections.size() + 1), sizes.length(length), atA, atB);
    }

    /** Adds a section, its name following from its place. */
    private void add(Section section) {
        sections.add(Stretches.put(section, section.stretch().named("section " + (sections.size() + 1))));
    }
}
