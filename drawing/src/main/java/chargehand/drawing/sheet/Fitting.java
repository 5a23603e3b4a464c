package chargehand.drawing.sheet;

import chargehand.drawing.picture.Box;
import chargehand.part.Part;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * What goes on the sheet: its size, the scale, the views where they lie, and the notes.
 *
 * @param sheet its size
 * @param scale of the main views
 * @param views laid out round the first one's origin
 * @param foot what stands below the views
 * @param room where the views go
 */
record Fitting(SheetSize sheet, DrawingScale scale, List<DrawnView> views, Foot foot, Box room) {
    /** Parts larger than this are not drawn larger than they are (mm). */
    private static final double SMALL = 50;

    /** A small part is enlarged to at most this (mm on paper). */
    private static final double LARGE = 110;

    /** Parts smaller than this are not drawn smaller than they are (mm). */
    private static final double REDUCED = 100;

    private static final Set<SheetSize> OFFICE = EnumSet.of(SheetSize.A4, SheetSize.A3);
    private static final Set<SheetSize> LARGER = EnumSet.of(SheetSize.A2, SheetSize.A1);
    private static final double MARGIN = 4;

    /** The fitting of a sheet with nothing filled in. */
    static Fitting of(Part part) {
        return of(part, Heading.BLANK);
    }

    /**
     * The first of sheet and scale on which the part goes with nothing on top of anything: full size if it can be, larger than
     * wont before a larger sheet, an office sheet if it can be. Where something is crowded on all of those, the one on which
     * least is.
     */
    static Fitting of(Part part, Heading heading) {
        LayoutWays ways = LayoutWays.of(part);
        Function<List<String>, Foot> feet = said -> Foot.of(part, heading, said);
        return of(feet, ways, OFFICE)
                .or(() -> of(feet, ways, LARGER))
                .orElseThrow(() -> new IllegalArgumentException(
                        "the part goes on no sheet at any scale: its largest size is " + ways.largest() + " mm"));
    }

    private static Optional<Fitting> of(Function<List<String>, Foot> feet, LayoutWays ways, Set<SheetSize> sheets) {
        Optional<Fitting> best = Optional.empty();
        int least = Integer.MAX_VALUE;
        for (SheetSize sheet : sheets) {
            double width = sheet.frame().width() - 2 * MARGIN;
            for (DrawingScale scale : scales(ways.largest(), sheet)) {
                for (Supplier<List<DrawnView>> way : ways.at(scale, width)) {
                    Fitting fitting = of(feet, sheet, scale, way.get());
                    int troubles = fitting.fits() ? fitting.troubles() : Integer.MAX_VALUE;
                    if (troubles == 0) {
                        return Optional.of(fitting);
                    }
                    if (troubles < least) {
                        best = Optional.of(fitting);
                        least = troubles;
                    }
                }
            }
        }
        return best;
    }

    private static Fitting of(
            Function<List<String>, Foot> feet, SheetSize sheet, DrawingScale scale, List<DrawnView> views) {
        List<String> said = new ArrayList<>();
        views.forEach(view -> said.addAll(view.view().notes()));
        Foot foot = feet.apply(said);
        return new Fitting(sheet, scale, views, foot, room(sheet, foot));
    }

    /** The scales to try on a sheet: those that look right first, then larger ones, where crowding may end, then smaller. */
    private static List<DrawingScale> scales(double largest, SheetSize sheet) {
        double most = largest < SMALL ? LARGE / largest : 1;
        double least = switch (sheet) {
            case A4 -> largest > REDUCED ? 0.5 : 1;
            case A3 -> 0.2;
            case A2, A1 -> 0;
        };
        List<DrawingScale> right = Arrays.stream(DrawingScale.values())
                .filter(scale -> scale.factor() <= most && scale.factor() >= least)
                .toList();
        List<DrawingScale> larger = Arrays.stream(DrawingScale.values())
                .filter(scale -> scale.factor() > most)
                .toList()
                .reversed();
        return Stream.of(
                        right.stream().filter(scale -> scale.factor() >= 1),
                        larger.stream(),
                        right.stream().filter(scale -> scale.factor() < 1))
                .flatMap(scales -> scales)
                .toList();
    }

    private static Box room(SheetSize sheet, Foot foot) {
        Box frame = sheet.frame();
        double below = foot.height() + 2 * MARGIN;
        return new Box(frame.left() + MARGIN, frame.top() + MARGIN, frame.right() - MARGIN, frame.bottom() - below);
    }

    private boolean fits() {
        Box bounds = Layout.bounds(views);
        return bounds.width() <= room.width() && bounds.height() <= room.height();
    }

    private int troubles() {
        return views.stream().mapToInt(view -> view.view().troubles()).sum();
    }
}
