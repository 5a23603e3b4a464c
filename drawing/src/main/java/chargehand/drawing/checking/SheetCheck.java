package chargehand.drawing.checking;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.sheet.DrawnSheet;
import java.util.ArrayList;
import java.util.List;

/** Looks at a finished sheet and says what is wrong with it. */
public final class SheetCheck {
    private static final double ON_FRAME = 0.01;

    private SheetCheck() {}

    /** Everything that is wrong with a sheet, and what is only counted. */
    public static List<SheetFault> of(DrawnSheet sheet) {
        PartSizes sizes = new PartSizes(sheet.part());
        List<SheetFault> faults = new ArrayList<>(ofPicture(sheet.picture(), sheet.frame(), sheet.titleBlock()));
        faults.addAll(new SizeChecks(sheet, sizes).all());
        faults.addAll(new Completeness(sheet, sizes).all());
        return faults;
    }

    /** What is wrong with a picture, whatever it shows. */
    static List<SheetFault> ofPicture(Picture picture, Box frame, Box titleBlock) {
        Ground ground = new Ground(picture);
        List<SheetFault> faults = new ArrayList<>();
        for (Mark mark : picture.marks()) {
            if (!frame.grown(ON_FRAME).holds(Box.of(mark))) {
                faults.add(SheetFault.of(
                        FaultKind.OUTSIDE_FRAME,
                        "something reaches over the frame",
                        Box.of(mark).centre()));
            }
        }
        faults.addAll(new WordChecks(ground, titleBlock).all());
        faults.addAll(new LineChecks(ground).all());
        return faults;
    }
}
