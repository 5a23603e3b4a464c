package chargehand.drawing.dxf;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Ink;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.drawing.picture.ScaledSheet;
import chargehand.drawing.picture.ScaledSheet.Role;
import chargehand.measure.LengthUnit;
import java.util.ArrayList;
import java.util.List;

/**
 * Writes a sheet as DXF for release 12 (AC1009, ASCII): one unit is one millimetre or one inch as the sizes are written, the
 * thing is at full size with the origin of its main view at nought, and the sheet round it is as much larger as the paper is
 * smaller. Dimensions and hatching are plain lines and words, since that release's own ones are drawn anew by every program.
 */
public final class Dxf {
    private static final Lettering REMARK = Lettering.height(2.5);
    private static final double BELOW = 6;
    private static final int MILLIMETRES = 4;
    private static final int INCHES = 1;

    private final ScaledSheet sheet;
    private final FullSize size;
    private final Groups groups = new Groups();

    private Dxf(ScaledSheet sheet) {
        this.sheet = sheet;
        size = FullSize.of(sheet);
    }

    /** The file's text, all of it ASCII. */
    public static String write(ScaledSheet sheet) {
        Dxf dxf = new Dxf(sheet);
        dxf.write();
        return dxf.groups.toString();
    }

    private void write() {
        comment(sheet.title());
        remarks().forEach(this::comment);
        List<Mark.Words> below = below();
        header(below);
        Tables.write(groups, size);
        groups.words(0, "SECTION").words(2, "BLOCKS").words(0, "ENDSEC");
        groups.words(0, "SECTION").words(2, "ENTITIES");
        Entities entities = new Entities(groups, size);
        Plot.of(sheet).forEach(entities::add);
        below.forEach(words -> entities.add(new Drawn.Words(Layer.ofWords(Role.SHEET), words)));
        groups.words(0, "ENDSEC").words(0, "EOF");
    }

    private void comment(String words) {
        groups.words(999, PlainText.of(words));
    }

    private List<String> remarks() {
        List<String> remarks = new ArrayList<>();
        remarks.add(
                sheet.unit() == LengthUnit.INCH
                        ? "Drawn at full size: 1 unit is 1 inch."
                        : "Drawn at full size: 1 unit is 1 mm.");
        remarks.addAll(sheet.remarks());
        return remarks;
    }

    /** What must be known before lengths are taken, in words below the sheet. */
    private List<Mark.Words> below() {
        List<Mark.Words> below = new ArrayList<>();
        double y = sheet.height() + BELOW;
        for (String remark : remarks()) {
            below.add(new Mark.Words(Ink.INK, REMARK, new Point(0, y), Mark.Align.LEFT, 0, remark));
            y += REMARK.linePitch();
        }
        return below;
    }

    private void header(List<Mark.Words> below) {
        Box paper = new Box(0, 0, sheet.width(), sheet.height());
        groups.words(0, "SECTION").words(2, "HEADER");
        groups.words(9, "$ACADVER").words(1, "AC1009");
        groups.words(9, "$DWGCODEPAGE").words(3, "ANSI_1252");
        groups.words(9, "$INSUNITS").whole(70, sheet.unit() == LengthUnit.INCH ? INCHES : MILLIMETRES);
        groups.words(9, "$MEASUREMENT").whole(70, sheet.unit() == LengthUnit.INCH ? 0 : 1);
        groups.words(9, "$LTSCALE").number(40, 1);
        groups.words(9, "$TEXTSTYLE").words(7, Tables.STYLE);
        corners("$EXTMIN", "$EXTMAX", below.stream().map(Box::of).reduce(paper, Box::with));
        corners("$LIMMIN", "$LIMMAX", paper);
        groups.words(0, "ENDSEC");
    }

    private void corners(String least, String most, Box box) {
        groups.words(9, least).place(10, size.x(new Point(box.left(), 0)), size.y(new Point(0, box.bottom())));
        groups.words(9, most).place(10, size.x(new Point(box.right(), 0)), size.y(new Point(0, box.top())));
    }
}
