package chargehand.method.stock;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.method.plan.Method.PassedOver;
import chargehand.method.rack.Piece;
import chargehand.method.rack.Piece.Condition;
import chargehand.method.rack.Piece.Sureness;
import chargehand.method.rack.Rack;
import chargehand.method.rack.Shape;
import chargehand.part.Body;
import chargehand.part.Part;
import chargehand.part.Section;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What holds for any part and any rack. */
final class AnyStockTest {
    private static final long SEED = 20260112;
    private static final int CASES = 300;
    private static final int PIECES = 40;
    private static final List<String> MATERIALS = List.of("EN8", "EN3B", "LG2", "PB1", "brass, unknown", "scrap");
    private static final List<String> DUTIES = List.of("", "steam, 100 psi", "hoist", "guides the rope");

    private static <T> T any(List<T> from, Random random) {
        return from.get(random.nextInt(from.size()));
    }

    private static String mm(Random random, int least, int most) {
        return least + random.nextInt((most - least) * 10) / 10.0 + "";
    }

    private static Part part(Random random) {
        String material = any(MATERIALS, random);
        if (random.nextInt(4) == 0) {
            return Wants.block(material, mm(random, 20, 200), mm(random, 10, 80), mm(random, 3, 30));
        }
        List<Section> sections = new ArrayList<>();
        for (int i = 0; i <= random.nextInt(4); i++) {
            sections.add(
                    random.nextInt(4) == 0
                            ? Wants.hexagon(mm(random, 10, 50), mm(random, 5, 60))
                            : Wants.round(mm(random, 5, 60), mm(random, 2, 120)));
        }
        return Wants.turned(material, any(DUTIES, random), sections.toArray(Section[]::new));
    }

    private static Piece piece(int number, Random random) {
        Shape shape = switch (random.nextInt(3)) {
            case 0 -> new Shape.Flat(Wants.mm(mm(random, 20, 100)), Wants.mm(mm(random, 4, 40)));
            case 1 -> new Shape.Polygon(any(List.of(4, 6, 8), random), Wants.mm(mm(random, 8, 60)));
            default -> Wants.round(mm(random, 8, 80));
        };
        Piece piece = Wants.bar("P" + number, any(MATERIALS, random), shape, mm(random, 20, 3000));
        return Wants.times(
                Wants.with(
                        Wants.with(piece, any(List.of(Condition.values()), random)),
                        any(List.of(Sureness.values()), random)),
                1 + random.nextInt(3));
    }

    @Test
    void candidates_anyPartAndRack_soundAndEveryPieceAccountedFor() {
        int offered = 0;
        for (int i = 0; i < CASES; i++) {
            offered += judged(new Random(SEED + i));
        }
        assertThat(offered).isGreaterThan(CASES);
    }

    /** How many candidates one part finds on one rack, each judged. */
    private static int judged(Random random) {
        Part part = part(random);
        int count = 1 + random.nextInt(6);
        List<Piece> pieces = new ArrayList<>();
        for (int i = 0; i < PIECES; i++) {
            pieces.add(piece(i, random));
        }
        Candidates candidates = StockChooser.candidates(part, count, new Rack(pieces), SmallShop.cuttingUp());
        assertThat(Stream.concat(
                                candidates.fit().stream()
                                        .map(each -> each.piece().name()),
                                candidates.passedOver().stream().map(PassedOver::piece))
                        .distinct())
                .containsExactlyInAnyOrderElementsOf(
                        pieces.stream().map(Piece::name).toList());
        assertThat(candidates.passedOver())
                .allSatisfy(passed -> assertThat(passed.why()).isNotBlank().endsWith("."));
        candidates.fit().forEach(candidate -> isSound(candidate, part, count));
        return candidates.fit().size();
    }

    private static void isSound(Candidate candidate, Part part, int count) {
        Yield gives = candidate.gives();
        Piece piece = candidate.piece();
        Length used = gives.perPiece()
                .times(gives.perLength())
                .minus(candidate.allowances().slot());
        assertThat(used).isLessThanOrEqualTo(piece.length().length());
        assertThat(gives.perLength() * gives.lengths()).isGreaterThanOrEqualTo(count);
        assertThat(gives.lengths()).isBetween(1, piece.count());
        assertThat(gives.turnedAway()).isBetween(0.0, 1.0);
        assertThat(gives.left()).isBetween(Length.ZERO, piece.length().length());
        assertThat(candidate.working()).isNotEmpty();
        if (part.body() instanceof Body.Turned body) {
            assertThat(gives.blank()).isGreaterThan(body.length());
            assertThat(candidate.raw().largestAcross()).isGreaterThanOrEqualTo(body.largestDiameter());
        }
        boolean careful = Duty.of(part.duty()).isCareful();
        assertThat(careful && piece.sure() == Sureness.UNKNOWN).isFalse();
    }
}
