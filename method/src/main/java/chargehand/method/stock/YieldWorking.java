package chargehand.method.stock;

import static chargehand.measure.LengthText.figures;
import static chargehand.measure.LengthText.in;

import chargehand.measure.Length;
import chargehand.measure.LengthUnit;
import chargehand.method.rack.Piece;
import chargehand.trade.material.Material;
import chargehand.trade.sum.Source;
import chargehand.trade.sum.Working;
import java.util.Locale;
import java.util.Optional;

/** Works out what comes out of a piece of stock, each step written down. */
final class YieldWorking {
    private static final double MM3_PER_M3 = 1e9;

    private final Suitable suitable;
    private final CuttingUp.Cut cut;
    private final Working working;
    private final LengthUnit unit;

    YieldWorking(Suitable suitable, CuttingUp.Cut cut, Working working) {
        this.suitable = suitable;
        this.cut = cut;
        this.working = working;
        this.unit = suitable.part().unit();
    }

    /** The yield when so many pieces are wanted, which the stock must give. */
    Yield worked(int count) {
        Piece piece = suitable.piece();
        working.fact("Across: " + piece.says(), suitable.room().say(), Skin.SOURCE);
        if (suitable.room().asDrawn()) {
            working.fact("Bright bar is drawn to the class", Skin.DRAWN_TO, Skin.DRAWN_SOURCE);
        }
        Length blank = blank();
        int perLength = perLength(blank);
        int lengths = (count + perLength - 1) / perLength;
        int inLast = count - (lengths - 1) * perLength;
        Length perPiece = cut.allowances().perPiece(suitable.room().along());
        Length left = Length.most(Length.ZERO, suitable.length().minus(perPiece.times(inLast)));
        Optional<Double> worth = worth(left);
        sayLeft(lengths, left, worth);
        Length used = suitable.length().times(lengths).minus(left);
        return new Yield(perLength, lengths, blank, perPiece, left, turnedAway(used, count), worth);
    }

    private Length blank() {
        Allowances add = cut.allowances();
        Length along = suitable.room().along();
        Length blank = add.blank(along);
        boolean stub = add.stub().isPositive();
        working.step(
                "Length of one piece with " + in(add.facing(), unit) + " to face off each end"
                        + (stub ? " and a stub to hold by" : ""),
                stub ? "l + 2·f + s" : "l + 2·f",
                fig(along) + " + 2 × " + fig(add.facing()) + (stub ? " + " + fig(add.stub()) : ""),
                in(blank, unit),
                CuttingUp.SOURCE);
        return blank;
    }

    private int perLength(Length blank) {
        Allowances add = cut.allowances();
        int pieces = add.piecesIn(suitable.length(), suitable.room().along());
        boolean held = add.held().isPositive();
        working.step(
                "Pieces from one length, " + cut.way().words() + ", slot " + in(add.slot(), unit)
                        + (held ? ", " + in(add.held(), unit) + " staying in the jaws" : ""),
                held ? "(L − held) / (blank + slot), whole pieces" : "(L + slot) / (blank + slot), whole pieces",
                "(" + fig(suitable.length()) + (held ? " − " + fig(add.held()) : " + " + fig(add.slot())) + ") / ("
                        + fig(blank) + " + " + fig(add.slot()) + ")",
                pieces == 1 ? "1 piece" : pieces + " pieces",
                Source.GEOMETRY);
        return pieces;
    }

    private void sayLeft(int lengths, Length left, Optional<Double> worth) {
        String say = "Left of the " + (lengths == 1 ? "length" : "last of " + lengths + " lengths") + " for the rack";
        String value = worth.map(each -> String.format(Locale.ROOT, ", worth %.2f in the shop's money", each))
                .orElse("");
        working.fact(say, in(left, unit) + value, Source.GEOMETRY);
    }

    private Optional<Double> worth(Length left) {
        double metresCubed = suitable.room().raw().areaSquareMm() * left.mm() / MM3_PER_M3;
        return suitable.piece().price().flatMap(price -> density().map(each -> price * each * metresCubed));
    }

    private Optional<Double> density() {
        return suitable.answer().material().map(Material::physical).map(each -> each.kilogramsPerCubicMetre());
    }

    private double turnedAway(Length used, int count) {
        double metal = suitable.room().raw().areaSquareMm() * used.mm();
        return Math.max(0, 1 - count * Thrift.outsideVolume(suitable.part()) / metal);
    }

    private String fig(Length length) {
        return figures(length, unit);
    }
}
