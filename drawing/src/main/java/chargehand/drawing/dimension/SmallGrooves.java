package chargehand.drawing.dimension;

import chargehand.drawing.view.Detail;
import chargehand.drawing.view.Look;
import chargehand.drawing.view.Side;
import chargehand.measure.Length;
import chargehand.part.Body;
import chargehand.part.Section;
import chargehand.part.shape.Station;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Finds the grooves that are too small on paper for sizes, and shows each kind of them once in a larger view. */
public final class SmallGrooves {
    /** Narrower than this on paper, a groove is shown larger (mm; drawing-office practice). */
    private static final double SMALL = 3;

    /** How wide it is shown at least (mm). */
    private static final double SHOWN = 8;

    /** More kinds than this are better shown on a larger drawing. */
    private static final int MOST = 3;

    /** How far round its middle a groove is shown, in widths and depths of it. */
    private static final double WIDTHS = 0.9;

    private static final double DEPTHS = 1.5;

    /** Of a deeper groove only the mouth is shown (mm on paper, radius). */
    private static final double LARGEST = 16;

    /** The letters of details, clear of those of datums, ends and sections. */
    private static final String LETTERS = "WXYZ";

    private SmallGrooves() {}

    /**
     * Grooves shown larger.
     *
     * @param letter of the view
     * @param detail the first of them
     * @param sections the sections that are alike
     */
    public record Enlarged(String letter, Detail detail, List<Integer> sections) {
        public Enlarged {
            sections = List.copyOf(sections);
        }
    }

    /**
     * The larger views that a side view needs.
     *
     * @param scales paper over part, those that may be used, largest first
     */
    public static List<Enlarged> of(Body.Turned body, Look look, List<Double> scales) {
        Map<String, List<Integer>> kinds = new LinkedHashMap<>();
        for (int i = 0; i < body.outside().size(); i++) {
            if (isSmall(body, i, look)) {
                Section groove = body.outside().get(i);
                kinds.computeIfAbsent(groove.length() + " " + groove.diameterTowardsA(), key -> new ArrayList<>())
                        .add(i);
            }
        }
        if (kinds.size() > MOST) {
            return List.of();
        }
        List<Enlarged> enlarged = new ArrayList<>();
        for (List<Integer> alike : kinds.values()) {
            String letter = LETTERS.substring(enlarged.size(), enlarged.size() + 1);
            enlarged.add(new Enlarged(letter, detail(body, alike.getFirst(), look, scales), alike));
        }
        return enlarged;
    }

    private static boolean isSmall(Body.Turned body, int index, Look look) {
        Section section = body.outside().get(index);
        boolean within = index > 0 && index < body.outside().size() - 1;
        return within && section instanceof Section.Groove && look.scale().size(section.length()) < SMALL;
    }

    private static Detail detail(Body.Turned body, int index, Look look, List<Double> scales) {
        Section groove = body.outside().get(index);
        Length rim = Length.least(
                        body.outside().get(index - 1).diameterTowardsB(),
                        body.outside().get(index + 1).diameterTowardsA())
                .half();
        Length depth = rim.minus(groove.diameterTowardsA().half());
        double scale = scale(groove.length(), scales);
        Length most = Length.mm(LARGEST / scale);
        Length reach = Length.most(groove.length().times(WIDTHS), Length.least(depth.times(DEPTHS), most));
        Length middle = body.start(index).plus(groove.length().half());
        Station place = new Station(middle, rim.minus(Length.least(depth, reach).half()));
        return new Detail(look, Side.ABOVE, place, reach, scale);
    }

    /** The least scale that shows it wide enough, else the largest there is. */
    private static double scale(Length width, List<Double> scales) {
        return scales.stream()
                .filter(scale -> scale * width.mm() >= SHOWN)
                .reduce((larger, smaller) -> smaller)
                .orElse(scales.getFirst());
    }
}
