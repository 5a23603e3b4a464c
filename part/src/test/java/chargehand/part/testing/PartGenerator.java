package chargehand.part.testing;

import chargehand.measure.LengthUnit;
import chargehand.part.Body;
import chargehand.part.Drafting;
import chargehand.part.DrawingIssue;
import chargehand.part.GeneralTolerance;
import chargehand.part.Part;
import chargehand.part.Projection;
import chargehand.part.Section;
import chargehand.part.Texture;
import chargehand.part.Tie;
import chargehand.part.check.PartCheck;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;

/**
 * Makes random parts that pass their checks: shouldered, threaded, grooved, coned and bored turned parts with cross holes
 * and keyways, and blocks with holes. The same seed gives the same parts in the same order.
 */
public final class PartGenerator {
    private static final int MOST_TRIES = 500;
    private static final List<String> MATERIALS =
            List.of("EN8", "mild steel", "gunmetal LG2", "phosphor bronze PB1", "stainless 316", "brass");

    private final Random random;
    private final Range range;

    /** How much of what a part can have is made use of. */
    public enum Range {
        /** Shoulders, threads, grooves, cones, polygons, bores, cross holes and keyways. */
        USUAL,
        /** Teeth, knurls, flats, what is cut into bores and faces, and parts that come back to be altered besides. */
        ALL
    }

    /** A generator of the usual parts. */
    public PartGenerator(long seed) {
        this(seed, Range.USUAL);
    }

    public PartGenerator(long seed, Range range) {
        this.random = new Random(seed);
        this.range = range;
    }

    /** A turned part or, one time in five, a block. */
    public Part part() {
        return random.nextInt(5) == 0 ? block() : turned();
    }

    public Part turned() {
        return sound(sizes -> {
            Body.Turned body = new TurnedShapes(random, sizes).body();
            return range == Range.ALL ? new FurtherShapes(random, sizes).added(body) : body;
        });
    }

    public Part block() {
        return sound(sizes -> {
            var shapes = new BlockShapes(random, sizes);
            Body.Block body = shapes.body();
            return range == Range.ALL ? shapes.added(body) : body;
        });
    }

    private Part sound(Function<Sizes, ? extends Body> shape) {
        for (int i = 0; i < MOST_TRIES; i++) {
            LengthUnit unit = random.nextBoolean() ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
            Part part = part(unit, shape.apply(new Sizes(random, unit)));
            if (PartCheck.of(part).isSound()) {
                return part;
            }
        }
        throw new IllegalStateException("no sound part in " + MOST_TRIES + " tries");
    }

    private Part part(LengthUnit unit, Body body) {
        String letter = String.valueOf((char) ('A' + random.nextInt(6)));
        return new Part(
                "Part " + random.nextInt(1000),
                random.nextBoolean() ? "KH-" + random.nextInt(1000) : "",
                letter,
                unit,
                MATERIALS.get(random.nextInt(MATERIALS.size())),
                random.nextInt(4) == 0 ? "steam, 10 bar: wet" : "",
                general(unit),
                random.nextBoolean()
                        ? Optional.of(new Texture(List.of(0.8, 1.6, 3.2).get(random.nextInt(3))))
                        : Optional.empty(),
                body,
                ties(body),
                random.nextInt(3) == 0 ? List.of("All edges broken.", "# \"quoted\": yes") : List.of(),
                drafting(letter));
    }

    private Drafting drafting(String letter) {
        var issue = new DrawingIssue(
                letter, "no: 1 changed", LocalDate.of(2026, 3, 1 + random.nextInt(28)), "J.V.", Optional.empty());
        return new Drafting(
                random.nextBoolean() ? Projection.FIRST_ANGLE : Projection.THIRD_ANGLE,
                random.nextInt(3) == 0 ? List.of(issue) : List.of());
    }

    private GeneralTolerance general(LengthUnit unit) {
        return random.nextBoolean()
                ? GeneralTolerance.Iso2768.MEDIUM
                : new GeneralTolerance.PlusMinus(
                        new Sizes(random, unit).fine(), "±" + new Sizes(random, unit).fineText());
    }

    private List<Tie> ties(Body body) {
        if (body instanceof Body.Turned turned && !turned.inside().isEmpty() && random.nextBoolean()) {
            return turned.outside().stream()
                    .filter(section -> section instanceof Section.Round)
                    .findFirst()
                    .map(section -> List.of(new Tie(
                            turned.inside().getFirst().name(),
                            section.name(),
                            new Sizes(random, LengthUnit.MILLIMETRE).written("0.02 mm"))))
                    .orElse(List.of());
        }
        return List.of();
    }
}
