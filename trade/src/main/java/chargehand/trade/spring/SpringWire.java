package chargehand.trade.spring;

import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Kind;
import chargehand.trade.sum.Kinds;
import chargehand.trade.sum.Source;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A kind of spring wire. Thin wire is stronger than thick: its tensile strength is A / d^m.
 *
 * @param name what it is called
 * @param shearModulus modulus in torsion
 * @param allowedShare share of the tensile strength that is allowed in torsion under a steady load
 */
public record SpringWire(String name, Pressure shearModulus, double allowedShare) {
    /** The same wire, as stiff as its certificate says. */
    SpringWire withShearModulus(Pressure modulus) {
        return new SpringWire(name, modulus, allowedShare);
    }

    private static final Table TABLE = Table.read(SpringWire.class, "spring-wire.csv");

    /** The field's kind. */
    static final Kind<SpringWire> KIND = Kinds.by("spring wire", SpringWire::parse, SpringWire::name);

    /** Where the figures come from. */
    public static Source source() {
        return TABLE.source();
    }

    /**
     * The wire of this name.
     *
     * @throws Unreadable when it is not known
     */
    public static SpringWire parse(String written) {
        String plain = written.trim().toLowerCase(Locale.ROOT);
        return TABLE.rows().stream()
                .filter(row -> row.listed("aliases").stream().anyMatch(alias -> alias.equalsIgnoreCase(plain)))
                .findFirst()
                .map(row -> new SpringWire(
                        row.text("name"),
                        Pressure.megapascals(row.number("shear_modulus")),
                        row.number("allowed_share")))
                .orElseThrow(() -> new Unreadable(
                        "this is no spring wire in the table: write " + String.join(", ", names()) + "."));
    }

    private static List<String> names() {
        return TABLE.rows().stream().map(row -> row.text("name")).distinct().toList();
    }

    /** The tensile strength of wire this thick; empty outside the sizes that are tabled. */
    public Optional<Pressure> strength(Length wire) {
        return TABLE.rows().stream()
                .filter(row -> row.text("name").equals(name))
                .filter(row -> wire.mm() >= row.number("from") && wire.mm() <= row.number("to"))
                .findFirst()
                .map(row -> strength(row, wire));
    }

    private static Pressure strength(Row row, Length wire) {
        return Pressure.megapascals(row.number("strength_a") / Math.pow(wire.mm(), row.number("strength_m")));
    }
}
