package chargehand.method.search;

import chargehand.method.plan.Blank;
import chargehand.method.plan.Method;
import chargehand.method.plan.Method.PassedOver;
import chargehand.method.plan.SetUp;
import chargehand.method.stock.Candidate;
import chargehand.part.Part;
import chargehand.trade.material.Material;
import chargehand.trade.material.Materials;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * A part as it comes out of one piece of stock: what it is cut as, and the method written down.
 *
 * @param part that is made
 * @param candidate the piece of stock and the way it is cut up
 * @param passedOver the other pieces, each with the reason
 */
record FromStock(Part part, Candidate candidate, List<PassedOver> passedOver) {
    /** What a material that the table does not know is cut as: a steel of middling strength, so at modest speeds. */
    private static final String UNKNOWN_CUT_AS = "EN8";

    /** The material whose speeds and forces are reckoned with. */
    Material material() {
        return known().orElseGet(() -> Materials.get(UNKNOWN_CUT_AS));
    }

    private Optional<Material> known() {
        return Materials.find(candidate.piece().material()).or(() -> Materials.find(part.material()));
    }

    /** The method of these set-ups; a guessed material is said. */
    Method method(int count, Blank blank, List<SetUp> setUps) {
        var use = new Method.StockUse(
                candidate.piece().name(),
                candidate.piece().says(),
                blank,
                candidate.gives().perLength(),
                candidate.working(),
                passedOver);
        return new Method(part.title(), part.issue(), count, use, setUps, cautions());
    }

    private List<String> cautions() {
        return known().isPresent()
                ? candidate.cautions()
                : Stream.concat(candidate.cautions().stream(), Stream.of(guess()))
                        .toList();
    }

    private String guess() {
        return "'" + candidate.piece().material()
                + "' is not in the table of materials: speeds and forces are those of " + UNKNOWN_CUT_AS
                + ". Ask what suits it before cutting.";
    }
}
