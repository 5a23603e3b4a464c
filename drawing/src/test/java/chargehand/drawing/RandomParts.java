package chargehand.drawing;

import chargehand.part.End;
import chargehand.part.Part;
import chargehand.part.Section;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;

/** Turned parts made up by a seeded generator: what is drawn must hold for those that nobody thought of too. */
public final class RandomParts {
    private static final List<String> THREADS =
            List.of("M10", "M16", "M24", "M20x1.5", "Tr 30x6 LH", "G 1/2", "1/2 BSW");

    private final Random random;

    private RandomParts(long seed) {
        random = new Random(seed);
    }

    public static List<Part> of(int count) {
        return IntStream.range(0, count)
                .mapToObj(seed -> new RandomParts(seed).part())
                .toList();
    }

    private Part part() {
        Turning t = Turning.mm("Part by chance");
        int sections = 1 + random.nextInt(6);
        for (int i = 0; i < sections; i++) {
            section(t, i);
        }
        if (random.nextInt(3) == 0) {
            bore(t);
        } else if (random.nextInt(3) == 0) {
            hole(t);
        }
        return t.part("KH-" + random.nextInt(1000), "EN8");
    }

    private void section(Turning t, int number) {
        String name = "section " + number;
        String length = Integer.toString(8 + random.nextInt(random.nextInt(8) == 0 ? 300 : 50));
        switch (random.nextInt(8)) {
            case 0 -> t.thread(name, THREADS.get(random.nextInt(THREADS.size())), length, t.chamfer("1"), t.plain());
            case 1 -> t.polygon(name, 3 + random.nextInt(6), diameter(), length, t.plain(), t.plain());
            case 2 -> t.cone(name, diameter(), diameter(), length);
            case 3 -> t.groove(name, Integer.toString(9 + random.nextInt(3)), Integer.toString(2 + random.nextInt(4)));
            case 4 -> t.round(name, t.letters(diameter(), "h7", -0.021, 0), length, t.plain(), t.chamfer("0.5"));
            default -> t.round(name, diameter(), length);
        }
    }

    private String diameter() {
        return Integer.toString(14 + random.nextInt(50));
    }

    private void bore(Turning t) {
        t.drilled("bore", End.A, "6");
        if (random.nextBoolean()) {
            t.bored("seat", End.B, t.letters("7", "H7", 0, 0.015), t.blind("5"), t.plain());
        }
    }

    private void hole(Turning t) {
        Section first = t.body().outside().getFirst();
        String at = Double.toString(first.length().mm() / 2);
        t.crossHole("hole", "3", at, random.nextInt(4) * 90);
    }
}
