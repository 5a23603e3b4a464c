package chargehand.trade.dividing;

import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.trade.sum.Kind;
import java.util.Arrays;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * The hole plates owned: circles parted by commas or spaces, plates by semicolons, as in {@code 15,16,17; 21,23,27}.
 * Circles that come one to an entry are taken to lie on one plate.
 */
record PlatesKind() implements Kind<List<IndexPlate>> {
    private static final int MOST_PLATES = 20;
    private static final int MOST_CIRCLES = 40;
    private static final Pattern WHOLE_NUMBER = Pattern.compile("\\d{1,4}");

    @Override
    public String name() {
        return "hole plates";
    }

    @Override
    public List<IndexPlate> read(String written, LengthUnit unit) {
        List<List<Integer>> entries = Arrays.stream(written.split(";|\\||/", -1))
                .map(String::strip)
                .filter(entry -> !entry.isEmpty())
                .map(PlatesKind::circles)
                .filter(circles -> !circles.isEmpty())
                .toList();
        if (entries.isEmpty() || entries.size() > MOST_PLATES * MOST_CIRCLES) {
            throw new Unreadable("write the circles of each plate, such as 15,16,17,18,19,20; 21,23,27,29,31,33.");
        }
        boolean onePlate = entries.stream().allMatch(circles -> circles.size() == 1);
        List<IndexPlate> plates = onePlate
                ? List.of(new IndexPlate(entries.stream().flatMap(List::stream).toList()))
                : entries.stream().map(IndexPlate::new).toList();
        if (plates.size() > MOST_PLATES
                || plates.stream().anyMatch(plate -> plate.circles().size() > MOST_CIRCLES)) {
            throw new Unreadable("at most " + MOST_PLATES + " plates of " + MOST_CIRCLES + " circles each are taken.");
        }
        return plates;
    }

    private static List<Integer> circles(String entry) {
        return Arrays.stream(entry.split("[,\\s]+", -1))
                .filter(text -> !text.isEmpty())
                .map(PlatesKind::holes)
                .toList();
    }

    private static int holes(String text) {
        int holes = WHOLE_NUMBER.matcher(text).matches() ? Integer.parseInt(text) : 0;
        if (holes < 1 || holes > IndexPlate.MOST_HOLES) {
            throw new Unreadable("a circle has from 1 to " + IndexPlate.MOST_HOLES
                    + " holes: write whole numbers, such as" + " 15,16,17,18,19,20.");
        }
        return holes;
    }

    @Override
    public String echo(List<IndexPlate> plates) {
        return plates.stream()
                .map(plate -> plate.circles().stream().map(String::valueOf).collect(Collectors.joining(", ")))
                .collect(Collectors.joining("; "));
    }
}
