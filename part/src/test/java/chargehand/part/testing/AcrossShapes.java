package chargehand.part.testing;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Depth;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Random cross holes and keyways in the round sections of a part. */
final class AcrossShapes {
    private final Random random;
    private final Sizes sizes;
    private final Body.Turned plain;

    AcrossShapes(Random random, Sizes sizes, Body.Turned plain) {
        this.random = random;
        this.sizes = sizes;
        this.plain = plain;
    }

    List<Across> features() {
        List<Across> features = new ArrayList<>();
        for (int i = 0; i < plain.outside().size() && features.size() < 2; i++) {
            if (plain.outside().get(i) instanceof Section.Round round && random.nextBoolean()) {
                features.add(feature(features.size() + 1, round, plain.start(i)));
            }
        }
        return features;
    }

    private Across feature(int number, Section.Round round, Length start) {
        double diameter = round.diameter().length().mm();
        double length = round.length().mm();
        Angle around = Angle.degrees(90 * random.nextInt(4));
        if (random.nextBoolean()) {
            Depth depth = random.nextBoolean() ? new Depth.Through() : new Depth.Blind(sizes.plain(diameter * 0.4));
            double hole = Math.min(diameter * 0.3, length * 0.5);
            return new Across.CrossHole(
                    "cross hole " + number, sizes.plain(hole), sizes.plain(start.mm() + length / 2), depth, around);
        }
        double width = Math.min(diameter / 4, length / 3);
        return new Across.Keyway(
                "keyway " + number,
                sizes.plain(width),
                sizes.plain(width / 2),
                sizes.plain(start.mm() + length * 0.2),
                sizes.plain(length * 0.6),
                around);
    }
}
