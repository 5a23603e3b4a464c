package chargehand.web.drawing;

import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import chargehand.web.serving.Sketches;
import java.util.List;

/**
 * A part's file as it is seen: the drawing, or what is wrong, each with its line.
 *
 * @param plate the drawing as an element of the page, empty while something is wrong
 * @param faults what must be mended first
 * @param remarks what may stand but should be thought about
 */
public record Seen(String plate, List<Said> faults, List<Said> remarks) {
    /** Something said about a line. */
    public record Said(int line, String say) {}

    /** Looks at a text. */
    public static Seen of(String text, Sketches sketches) {
        return of(PartFile.read(text), sketches);
    }

    static Seen of(PartReading reading, Sketches sketches) {
        return switch (reading) {
            case PartReading.Read read ->
                new Seen(
                        sketches.of(read.part()),
                        List.of(),
                        read.remarks().stream()
                                .map(remark -> new Said(remark.line(), remark.say()))
                                .toList());
            case PartReading.Faulty faulty ->
                new Seen(
                        "",
                        faulty.faults().stream()
                                .map(fault -> new Said(fault.line(), fault.say()))
                                .toList(),
                        List.of());
        };
    }
}
