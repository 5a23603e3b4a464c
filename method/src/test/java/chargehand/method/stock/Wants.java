package chargehand.method.stock;

import chargehand.measure.Length;
import chargehand.measure.LengthReader;
import chargehand.measure.LengthUnit;
import chargehand.measure.Written;
import chargehand.method.rack.Piece;
import chargehand.method.rack.Piece.Condition;
import chargehand.method.rack.Piece.Sureness;
import chargehand.method.rack.Rack;
import chargehand.method.rack.Shape;
import chargehand.part.Body;
import chargehand.part.Edge;
import chargehand.part.GeneralTolerance;
import chargehand.part.Part;
import chargehand.part.Section;
import chargehand.part.Size;
import chargehand.part.Stretch;
import chargehand.part.Tie;
import chargehand.trade.thread.ScrewThread;
import java.util.List;
import java.util.Optional;

/** Small parts and pieces of stock to ask about; bare numbers are millimetres. */
final class Wants {
    private Wants() {}

    static Written mm(String text) {
        return LengthReader.read(text, LengthUnit.MILLIMETRE);
    }

    static Size size(String text) {
        return Size.general(mm(text));
    }

    static Section round(String diameter, String length) {
        return new Section.Round(stretch("round " + diameter, length), size(diameter));
    }

    static Section hexagon(String flats, String length) {
        Length corners = mm(flats).length().times(1 / Math.cos(Math.PI / 6));
        return new Section.Polygon(stretch("hexagon", length), 6, size(flats), corners);
    }

    static Section thread(String designation, String fit, String length) {
        return new Section.Threaded(stretch("thread " + designation, length), ScrewThread.parse(designation), fit);
    }

    private static Stretch stretch(String name, String length) {
        return new Stretch(name, size(length), new Edge.Plain(), new Edge.Plain());
    }

    static Part turned(String material, String duty, Section... sections) {
        return part(material, duty, new Body.Turned(List.of(sections), List.of(), List.of()), List.of());
    }

    static Part tied(Part part, Tie tie) {
        return part(part.material(), part.duty(), part.body(), List.of(tie));
    }

    static Part block(String material, String length, String width, String thickness) {
        return part(material, "", new Body.Block(size(length), size(width), size(thickness), List.of()), List.of());
    }

    private static Part part(String material, String duty, Body body, List<Tie> ties) {
        return new Part(
                "test piece",
                "",
                "A",
                LengthUnit.MILLIMETRE,
                material,
                duty,
                GeneralTolerance.Iso2768.MEDIUM,
                Optional.empty(),
                body,
                ties,
                List.of());
    }

    static Piece bar(String name, String material, Shape shape, String length) {
        return new Piece(
                name,
                "rack",
                material,
                Sureness.CERTIFIED,
                shape,
                mm(length),
                1,
                Condition.BRIGHT,
                Optional.of(2.0),
                "");
    }

    static Shape round(String diameter) {
        return new Shape.Round(mm(diameter));
    }

    static Piece with(Piece piece, Sureness sure) {
        return new Piece(
                piece.name(),
                piece.place(),
                piece.material(),
                sure,
                piece.shape(),
                piece.length(),
                piece.count(),
                piece.condition(),
                piece.price(),
                piece.note());
    }

    static Piece with(Piece piece, Condition condition) {
        return new Piece(
                piece.name(),
                piece.place(),
                piece.material(),
                piece.sure(),
                piece.shape(),
                piece.length(),
                piece.count(),
                condition,
                piece.price(),
                piece.note());
    }

    static Piece times(Piece piece, int count) {
        return new Piece(
                piece.name(),
                piece.place(),
                piece.material(),
                piece.sure(),
                piece.shape(),
                piece.length(),
                count,
                piece.condition(),
                piece.price(),
                piece.note());
    }

    static Candidates choose(Part part, int count, Piece... pieces) {
        return StockChooser.candidates(part, count, new Rack(List.of(pieces)), SmallShop.cuttingUp());
    }
}
