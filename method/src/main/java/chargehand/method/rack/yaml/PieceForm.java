package chargehand.method.rack.yaml;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.measure.Notation;
import chargehand.measure.Notations;
import chargehand.measure.Unreadable;
import chargehand.measure.Written;
import chargehand.method.kit.yaml.KitText;
import chargehand.method.rack.Piece;
import chargehand.method.rack.Piece.Condition;
import chargehand.method.rack.Piece.Sureness;
import chargehand.method.rack.Shape;
import chargehand.method.rack.Shape.Flat;
import chargehand.method.rack.Shape.Polygon;
import chargehand.method.rack.Shape.Round;
import chargehand.part.yaml.tree.Form;
import java.util.List;
import java.util.Optional;

/** Reads one piece on the rack. */
final class PieceForm {
    private static final List<String> SHAPES = List.of("round", "hexagon", "square", "octagon", "flat");
    private static final List<String> KEYS = List.of(
            "name",
            "place",
            "material",
            "sure",
            "length",
            "count",
            "condition",
            "price",
            "note",
            "round",
            "hexagon",
            "square",
            "octagon",
            "flat");
    private static final int MOST_ALIKE = 10_000;
    private static final double HIGHEST_PRICE = 100_000;
    private static final Written STAND_IN = new Written("1 mm", Length.mm(1), LengthUnit.MILLIMETRE);

    private final Form form;

    private PieceForm(Form form) {
        this.form = form;
    }

    static Optional<Piece> read(Form form) {
        return form.oneOf(SHAPES, KEYS).flatMap(shape -> new PieceForm(form).piece(shape));
    }

    private Optional<Piece> piece(String shape) {
        String name = form.text("name");
        String place = form.text("place");
        String material = form.text("material");
        Sureness sure = form.value("sure", text -> KitText.word(text, Sureness.class), Sureness.UNKNOWN);
        Optional<Shape> across = across(shape);
        Written length = length("length");
        Notation<Integer> counts = Notations.count(1, MOST_ALIKE);
        int count =
                form.find("count", text -> counts.read(text, form.bareUnit())).orElse(1);
        Condition condition = form.value("condition", text -> KitText.word(text, Condition.class), Condition.RECLAIMED);
        Optional<Double> price = form.find("price", this::price);
        String note = form.findText("note").orElse("");
        return form.build(() ->
                new Piece(name, place, material, sure, across.orElseThrow(), length, count, condition, price, note));
    }

    private Optional<Shape> across(String shape) {
        return switch (shape) {
            case "round" -> Optional.of(new Round(length(shape)));
            case "hexagon" -> Optional.of(new Polygon(6, length(shape)));
            case "square" -> Optional.of(new Polygon(4, length(shape)));
            case "octagon" -> Optional.of(new Polygon(8, length(shape)));
            case "flat" -> form.form(shape).flatMap(PieceForm::flat);
            default -> throw new IllegalStateException("no piece is written as " + shape);
        };
    }

    private static Optional<Shape> flat(Form form) {
        PieceForm flat = new PieceForm(form);
        Written width = flat.length("width");
        Written thickness = flat.length("thickness");
        return form.build(() -> new Flat(width, thickness));
    }

    private Written length(String key) {
        return form.value(key, text -> KitText.positive(text, form.bareUnit()), STAND_IN);
    }

    private double price(String text) {
        double price = Notations.NUMBER.read(text, form.bareUnit()).value();
        if (!(price >= 0 && price <= HIGHEST_PRICE)) {
            throw new Unreadable("'" + text + "' is no price: write what a kilogram costs, such as 2.40.");
        }
        return price;
    }
}
