package chargehand.part;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.List;

/**
 * A centre hole of ISO 6411.
 *
 * @param form which
 * @param pilot the diameter of the drilled hole
 * @param mouth the diameter at the face
 */
public record CentreHole(Form form, Length pilot, Length mouth) {
    private static final List<CentreHole> LIST =
            Table.read(CentreHole.class, "iso6411-centre-holes.csv").rows().stream()
                    .map(CentreHole::of)
                    .toList();

    /** The forms. */
    public enum Form {
        /** Plain, 60°. */
        A,
        /** With a second cone that keeps the first from harm, 60° and 120°. */
        B,
        /** With curved flanks. */
        R
    }

    private static CentreHole of(Row row) {
        return new CentreHole(
                Form.valueOf(row.text("form")), Length.mm(row.number("pilot")), Length.mm(row.number("mouth")));
    }

    /** All that the standard has. */
    public static List<CentreHole> list() {
        return LIST;
    }

    /** As a drawing names it, such as {@code B 2.5/8}. */
    public String designation() {
        return form + " " + LengthText.figures(pilot, LengthUnit.MILLIMETRE) + "/"
                + LengthText.figures(mouth, LengthUnit.MILLIMETRE);
    }
}
