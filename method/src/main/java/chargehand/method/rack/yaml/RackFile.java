package chargehand.method.rack.yaml;

import chargehand.measure.LengthUnit;
import chargehand.method.kit.yaml.KitText;
import chargehand.method.kit.yaml.SchemaText;
import chargehand.method.rack.Piece;
import chargehand.method.rack.Rack;
import chargehand.part.yaml.tree.Faults;
import chargehand.part.yaml.tree.Form;
import chargehand.part.yaml.tree.YamlTree;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads a rack from the text of its file. */
public final class RackFile {
    private final Map<String, Integer> lineOfPiece = new HashMap<>();

    private RackFile() {}

    /** Reads a rack. */
    public static RackRead read(String text) {
        Faults faults = new Faults();
        Optional<Rack> rack = YamlTree.read(text, faults)
                .flatMap(twig -> Form.open(twig, "a rack", faults, LengthUnit.MILLIMETRE))
                .flatMap(form -> new RackFile().rack(form));
        return rack.isPresent() && faults.isEmpty()
                ? new RackRead.Sound(rack.get())
                : new RackRead.Refused(faults.list());
    }

    /** The JSON Schema of a rack file, as text. */
    public static String schema() {
        return SchemaText.of(Rack.class, "rack.schema.json");
    }

    private Optional<Rack> rack(Form whole) {
        LengthUnit unit = whole.value("unit", KitText::unit, LengthUnit.MILLIMETRE);
        Form form = whole.withBareUnit(unit);
        form.know(List.of("unit"));
        form.text("rack");
        List<Piece> pieces =
                form.rows("pieces", (row, number) -> PieceForm.read(row).filter(piece -> isNew(row, piece)));
        return form.build(() -> new Rack(pieces));
    }

    private boolean isNew(Form row, Piece piece) {
        Integer line = lineOfPiece.putIfAbsent(
                piece.name().toLowerCase(Locale.ROOT), row.place("name").line());
        if (line != null) {
            row.refuse(
                    "name",
                    RackFault.NAME_TWICE,
                    "A piece called '" + piece.name() + "' stands in line " + line
                            + " already: give this one a name of its own.");
        }
        return line == null;
    }
}
