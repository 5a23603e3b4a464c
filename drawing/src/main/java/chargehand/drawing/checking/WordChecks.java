package chargehand.drawing.checking;

import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.LineStyle;
import java.util.ArrayList;
import java.util.List;

/** Looks at the words of a sheet: what they lie on, and whether they can be read. */
record WordChecks(Ground ground, Box titleBlock) {
    /** Words of one size may touch: they are set side by side (mm). */
    private static final double TOUCHING = 0.02;

    /** ISO 3098; and at the machine nothing smaller can be read (mm). */
    private static final double LEAST = 2.49;

    /** The captions in the title block, which nobody works to (mm). */
    private static final double LEAST_IN_TITLE_BLOCK = 1.79;

    List<SheetFault> all() {
        List<SheetFault> faults = new ArrayList<>();
        List<Ground.Words> words = ground.words();
        for (int i = 0; i < words.size(); i++) {
            onWords(words.get(i), words.subList(i + 1, words.size()), faults);
            onLines(words.get(i), faults);
            size(words.get(i), faults);
        }
        ground.cleared().forEach(cleared -> edgeCleared(cleared, faults));
        return faults;
    }

    private static SheetFault fault(FaultKind kind, Ground.Words words, String say) {
        return SheetFault.of(kind, "'" + words.text() + "' " + say, words.box().centre());
    }

    private static void onWords(Ground.Words one, List<Ground.Words> others, List<SheetFault> faults) {
        Box box = one.box().grown(-TOUCHING);
        others.stream()
                .filter(other -> box.overlaps(other.box()))
                .forEach(other -> faults.add(fault(FaultKind.WORDS_ON_WORDS, one, "lies on '" + other.text() + "'")));
    }

    private void onLines(Ground.Words words, List<SheetFault> faults) {
        Box box = words.box().grown(-TOUCHING);
        boolean cleared = ground.cleared().stream()
                .anyMatch(paper -> paper.order() < words.order() && paper.box().holds(box));
        for (Ground.Line line : ground.lines()) {
            if (line.meets(box)) {
                if (line.isEdge()) {
                    faults.add(fault(FaultKind.WORDS_ON_OUTLINE, words, "lies on an edge"));
                } else if (!cleared || !mayBeCleared(line)) {
                    faults.add(fault(
                            line.style() == LineStyle.SYMBOL ? FaultKind.WORDS_ON_WORDS : FaultKind.WORDS_ON_LINES,
                            words,
                            "lies on a line"));
                }
            }
        }
        ground.heads().stream()
                .filter(head -> head.box().overlaps(box))
                .forEach(head -> faults.add(fault(FaultKind.WORDS_ON_LINES, words, "lies on an arrow")));
    }

    /** Hatching and axes give way to words. */
    private static boolean mayBeCleared(Ground.Line line) {
        return line.style() == LineStyle.HATCH || line.style() == LineStyle.CHAIN;
    }

    private void size(Ground.Words words, List<SheetFault> faults) {
        double least = titleBlock.holds(words.box()) ? LEAST_IN_TITLE_BLOCK : LEAST;
        if (words.lettering().capitals() < least) {
            faults.add(fault(FaultKind.SMALL_WORDS, words, "is too small to read"));
        }
    }

    private void edgeCleared(Ground.Cleared cleared, List<SheetFault> faults) {
        ground.lines().stream()
                .filter(line -> line.isEdge() && line.order() < cleared.order() && line.meets(cleared.box()))
                .forEach(line -> faults.add(SheetFault.of(
                        FaultKind.WORDS_ON_OUTLINE,
                        "clear paper lies on an edge",
                        cleared.box().centre())));
    }
}
