package chargehand.drawing.sheet;

import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Box;
import chargehand.drawing.view.AxialScale;
import chargehand.drawing.view.Shortening;
import chargehand.part.Body;
import chargehand.part.Part;
import chargehand.part.shape.Solid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * What goes on the sheet: its size, the scale, the views where they lie, and the notes.
 *
 * @param sheet its size
 * @param scale of the main views
 * @param views laid out round the first one's origin
 * @param notes to print
 * @param room where the views go
 */
record Fitting(SheetSize sheet, DrawingScale scale, List<Layout.Placed> views, List<String> notes, Box room) {
    /** Parts larger than this are not drawn larger than they are (mm). */
    private static final double SMALL = 50;

    /** A small part is enlarged to at most this (mm on paper). */
    private static final double LARGE = 110;

    /** Parts smaller than this are not drawn smaller than they are (mm). */
    private static final double REDUCED = 100;

    private static final double MARGIN = 4;
    static final Lettering NOTE = Lettering.height(2.5);

    /** The first of sheet and scale on which the part goes: full size if it can be, an office sheet if it can be. */
    static Fitting of(Part part) {
        Ways ways = ways(part);
        for (SheetSize sheet : SheetSize.values()) {
            double width = sheet.frame().width() - 2 * MARGIN;
            for (DrawingScale scale : scales(ways.largest(), sheet)) {
                for (List<Layout.Placed> views : ways.at(scale, width)) {
                    Fitting fitting = fitting(part, sheet, scale, views);
                    if (fitting.fits()) {
                        return fitting;
                    }
                }
            }
        }
        throw new IllegalArgumentException("the part is too large for any sheet: " + ways.largest() + " mm");
    }

    /** The ways to lay out one part at a scale, the best liked first. */
    private interface Ways {
        /** Its largest size (mm). */
        double largest();

        /** The ways, each laid out only when it is looked at. */
        Iterable<List<Layout.Placed>> at(DrawingScale scale, double width);
    }

    private static Ways ways(Part part) {
        return switch (part.body()) {
            case Body.Turned body -> new Turned(part, body, Solid.of(body));
            case Body.Block block -> new Block(part, block);
        };
    }

    private record Turned(Part part, Body.Turned body, Solid solid) implements Ways {
        @Override
        public double largest() {
            return Math.max(body.length().mm(), body.largestDiameter().mm());
        }

        @Override
        public Iterable<List<Layout.Placed>> at(DrawingScale scale, double width) {
            Set<AxialScale> axial =
                    new LinkedHashSet<>(List.of(AxialScale.of(scale.factor()), Shortening.of(solid, scale.factor())));
            return () -> axial.stream()
                    .map(one -> Layout.of(part, body, solid, one, width))
                    .iterator();
        }
    }

    private record Block(Part part, Body.Block block) implements Ways {
        @Override
        public double largest() {
            return Math.max(block.length().length().mm(), block.width().length().mm());
        }

        @Override
        public Iterable<List<Layout.Placed>> at(DrawingScale scale, double width) {
            return List.of(BlockLayout.of(part, block, scale.factor(), width));
        }
    }

    private static List<DrawingScale> scales(double largest, SheetSize sheet) {
        double most = largest < SMALL ? LARGE / largest : 1;
        double least = switch (sheet) {
            case A4 -> largest > REDUCED ? 0.5 : 1;
            case A3 -> 0.2;
            case A2, A1 -> 0;
        };
        return Arrays.stream(DrawingScale.values())
                .filter(scale -> scale.factor() <= most && scale.factor() >= least)
                .toList();
    }

    private static Fitting fitting(Part part, SheetSize sheet, DrawingScale scale, List<Layout.Placed> views) {
        List<String> said = new ArrayList<>();
        views.forEach(view -> said.addAll(view.view().notes()));
        List<String> notes = Notes.of(part, said);
        return new Fitting(sheet, scale, views, notes, room(sheet, notes));
    }

    private static Box room(SheetSize sheet, List<String> notes) {
        Box frame = sheet.frame();
        double below = TitleBlock.HEIGHT + notes.size() * NOTE.linePitch() + 2 * MARGIN;
        return new Box(frame.left() + MARGIN, frame.top() + MARGIN, frame.right() - MARGIN, frame.bottom() - below);
    }

    private boolean fits() {
        Box bounds = Layout.bounds(views);
        return bounds.width() <= room.width() && bounds.height() <= room.height();
    }
}
