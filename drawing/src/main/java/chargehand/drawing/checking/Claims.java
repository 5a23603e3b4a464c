package chargehand.drawing.checking;

import chargehand.drawing.dimension.Placing;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sheet.DrawnSheet;
import chargehand.drawing.sheet.DrawnView;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * Everything that is said at sizes on a sheet, and where its arrows point.
 *
 * @param view in which it stands
 * @param tips of its arrows, in the view's frame
 */
record Claims(DrawnView view, Printed printed, List<Point> tips) {
    private static final double SAME = 1e-6;

    /** The scale of a view of its own, in its title. */
    private static final Pattern SCALE = Pattern.compile("^[A-Z] +\\d+:\\d+$");

    Claims {
        tips = List.copyOf(tips);
    }

    /** All of a sheet, names of ends, datums and sections left out, and tables, which say what follows from sizes. */
    static List<Claims> of(DrawnSheet sheet, PartSizes sizes) {
        List<Claims> claims = new ArrayList<>();
        List<DrawnView> views = sheet.views().stream()
                .filter(view -> view.shows() != DrawnView.Shows.TABLE)
                .toList();
        for (DrawnView view : views) {
            for (Placing placing : view.view().placed()) {
                String says = placing.says();
                if (says.chars().anyMatch(Character::isDigit)
                        && !SCALE.matcher(says).find()) {
                    claims.add(new Claims(
                            view, Printed.read(says, sheet.part().unit(), sizes), ends(placing, origins(view))));
                }
            }
        }
        return claims;
    }

    /** Where its arrows point; of a running dimension its origin too, where there is a circle and no arrow. */
    private static List<Point> ends(Placing placing, List<Point> origins) {
        List<Point> ends = new ArrayList<>(placing.tips());
        if (ends.size() == 1) {
            placing.lines().stream()
                    .filter(line -> line.kind() == Placing.Kind.DIMENSION)
                    .map(line -> line.segment().from())
                    .filter(origins::contains)
                    .forEach(ends::addFirst);
        }
        return ends;
    }

    /** The circles from which running dimensions begin. */
    private static List<Point> origins(DrawnView view) {
        return view.view().placed().stream()
                .flatMap(placing -> placing.signs().stream())
                .filter(Mark.Circle.class::isInstance)
                .map(mark -> ((Mark.Circle) mark).centre())
                .toList();
    }

    boolean isLevel() {
        return tips.size() == 2 && Math.abs(tips.getFirst().y() - tips.getLast().y()) < SAME;
    }

    boolean isUpright() {
        return tips.size() == 2 && Math.abs(tips.getFirst().x() - tips.getLast().x()) < SAME;
    }

    /** How long it is drawn (mm). */
    double drawn() {
        return tips.getFirst().distance(tips.getLast());
    }
}
