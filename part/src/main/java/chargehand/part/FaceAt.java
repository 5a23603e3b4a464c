package chargehand.part;

import chargehand.measure.Length;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A face across the axis, named by a section that it ends.
 *
 * @param section its name
 * @param end the end of the section that the face is at
 */
public record FaceAt(String section, End end) {
    /** The face of this number, counted from 0 at end A: the beginning of a section, or the end of the last one. */
    public static FaceAt of(Body.Turned body, int face) {
        int last = body.outside().size() - 1;
        return face > last
                ? new FaceAt(body.outside().get(last).name(), End.B)
                : new FaceAt(body.outside().get(face).name(), End.A);
    }

    /** Its number, counted from 0 at end A; empty where there is no such section. */
    public Optional<Integer> number(Body.Turned body) {
        return IntStream.range(0, body.outside().size())
                .filter(index -> body.outside().get(index).name().equals(section))
                .mapToObj(index -> end == End.A ? index : index + 1)
                .findFirst();
    }

    /** How far it lies from end A; empty where there is no such section. */
    public Optional<Length> position(Body.Turned body) {
        return number(body).map(body::start);
    }

    /** As a part file has it: {@code collar, B}. */
    public String text() {
        return section + ", " + end;
    }
}
