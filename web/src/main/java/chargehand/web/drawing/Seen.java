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
 * @param lengths what may be done to its lengths
 * @param address of its job
 */
public record Seen(String plate, List<Said> faults, List<Said> remarks, Lengths lengths, String address) {
    /** Something said about a line. */
    public record Said(int line, String say) {}

    /** Looks at a text. */
    public static Seen of(String text, Sketches sketches, String address) {
        return switch (PartFile.read(text)) {
            case PartReading.Read read ->
                new Seen(
                        sketches.touched(read.part()),
                        List.of(),
                        read.remarks().stream()
                                .map(remark -> new Said(remark.line(), remark.say()))
                                .toList(),
                        Lengths.of(read.part()),
                        address);
            case PartReading.Faulty faulty ->
                new Seen(
                        "",
                        faulty.faults().stream()
                                .map(fault -> new Said(fault.line(), fault.say()))
                                .toList(),
                        List.of(),
                        Lengths.NONE,
                        address);
        };
    }

    /** The same with what was just asked for of its lengths and cannot be. */
    Seen with(List<Lengths.Clash> clashes, Lengths.Ends asked) {
        return clashes.isEmpty() ? this : new Seen(plate, faults, remarks, lengths.with(clashes, asked), address);
    }
}
