package chargehand.trade.bolt;

import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.measure.Unreadable;
import chargehand.trade.material.Material;
import chargehand.trade.material.Materials;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Source;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.Locale;
import java.util.Optional;

/**
 * How strong a bolt is: a property class of the standard, or a bolt made of a material.
 *
 * @param name what it is called
 * @param smallProof stress that it bears without any set, up to M16
 * @param largeProof the same above M16
 * @param smallTensile tensile strength up to M16
 * @param largeTensile the same above M16
 * @param source where the figures come from
 */
public record BoltGrade(
        String name,
        Pressure smallProof,
        Pressure largeProof,
        Pressure smallTensile,
        Pressure largeTensile,
        Source source) {
    private static final Table TABLE = Table.read(BoltGrade.class, "grades.csv");
    private static final Length SMALL = Length.mm(16);

    /** Proof stress of a bolt turned from a material, over its yield strength (common practice). */
    private static final double PROOF_OF_YIELD = 0.9;

    static final Kind<BoltGrade> KIND = Kinds.by("grade or material", BoltGrade::parse, BoltGrade::name);

    /**
     * The grade or material of this name.
     *
     * @throws Unreadable when it is neither
     */
    public static BoltGrade parse(String written) {
        String plain = written.trim().toLowerCase(Locale.ROOT);
        Optional<BoltGrade> grade = TABLE.rows().stream()
                .filter(row -> row.listed("aliases").stream().anyMatch(alias -> alias.equalsIgnoreCase(plain)))
                .findFirst()
                .map(BoltGrade::of);
        return grade.or(() -> Materials.find(written).map(BoltGrade::of))
                .orElseThrow(
                        () -> new Unreadable("this is neither a grade nor a material: write 8.8, A4-80, EN8 or 316."));
    }

    private static BoltGrade of(Row row) {
        return new BoltGrade(
                "grade " + row.text("grade"),
                Pressure.megapascals(row.number("small_proof")),
                Pressure.megapascals(row.number("large_proof")),
                Pressure.megapascals(row.number("small_tensile")),
                Pressure.megapascals(row.number("large_tensile")),
                TABLE.source());
    }

    private static BoltGrade of(Material material) {
        Pressure tensile = material.strength().tensile();
        double yield = material.strength().yield().map(Pressure::megapascals).orElse(tensile.megapascals() / 2);
        var proof = Pressure.megapascals(PROOF_OF_YIELD * yield);
        return new BoltGrade(
                material.name(),
                proof,
                proof,
                tensile,
                tensile,
                material.strength().source());
    }

    public Pressure proof(Length diameter) {
        return diameter.isMoreThan(SMALL) ? largeProof : smallProof;
    }

    public Pressure tensile(Length diameter) {
        return diameter.isMoreThan(SMALL) ? largeTensile : smallTensile;
    }
}
