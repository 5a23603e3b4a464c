package chargehand.drawing.dimension;

import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.FaceAt;
import chargehand.part.LengthWish;
import chargehand.part.Part;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * The lengths along the outside of a turned part that its drawing gives, for people to have otherwise.
 *
 * @param lengths from end A on
 * @param circles what is wanted to be given but follows from others, and is in brackets for that
 */
public record GivenLengths(List<Given> lengths, List<Circle> circles) {
    /** What a block has. */
    private static final GivenLengths NONE = new GivenLengths(List.of(), List.of());

    public GivenLengths {
        lengths = List.copyOf(lengths);
        circles = List.copyOf(circles);
    }

    /**
     * A length.
     *
     * @param from the number of the face it begins at, from 0 at end A
     * @param to the number of the face it ends at, more than {@code from}
     * @param says as it is printed
     * @param bracketed whether it is in brackets
     * @param limited whether it has limits of its own, so that it cannot be bracketed
     * @param wish what is wanted of it, nothing where nobody wants anything
     */
    public record Given(int from, int to, String says, boolean bracketed, boolean limited, LengthWish wish) {}

    /**
     * A length that would be said twice.
     *
     * @param wanted what is wanted
     * @param others what it follows from, those first that are best put in brackets: the longest, whose general tolerance
     *     is the widest
     */
    public record Circle(Given wanted, List<Given> others) {
        public Circle {
            others = List.copyOf(others);
        }
    }

    /** The lengths of a part; none of a block, whose lengths are not to be had otherwise. */
    public static GivenLengths of(Part part) {
        return switch (part.body()) {
            case Body.Turned turned -> new Numbers(turned, Wishes.of(part, turned)).of(new SizeText(part.unit()));
            case Body.Block block -> NONE;
        };
    }

    /** Faces and their numbers. */
    private record Numbers(Body.Turned body, Wishes wishes) {
        GivenLengths of(SizeText text) {
            AxialScheme.Chosen chosen = AxialScheme.of(body, text, wishes);
            List<Circle> circles = chosen.circles().entrySet().stream()
                    .map(circle -> new Circle(
                            given(circle.getKey()),
                            circle.getValue().stream()
                                    .sorted(Comparator.comparing(AxialDimension::length)
                                            .reversed())
                                    .map(this::given)
                                    .toList()))
                    .toList();
            return new GivenLengths(chosen.lengths().stream().map(this::given).toList(), circles);
        }

        private Given given(AxialDimension length) {
            int from = number(length.from());
            int to = number(length.to());
            boolean limited = to == from + 1
                    && body.outside().get(from).stretch().length().isToleranced();
            LengthWish wish = Optional.of(length.faces())
                    .flatMap(wishes::find)
                    .orElseGet(() -> LengthWish.none(FaceAt.of(body, from), FaceAt.of(body, to)));
            return new Given(from, to, length.wording().toString(), length.isBracketed(), limited, wish);
        }

        private int number(Length face) {
            return IntStream.rangeClosed(0, body.outside().size())
                    .filter(index -> body.start(index).equals(face))
                    .findFirst()
                    .orElseThrow();
        }
    }
}
