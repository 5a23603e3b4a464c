package chargehand.part.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.Part;
import chargehand.part.testing.PartText;
import chargehand.part.yaml.tree.Fault;
import java.util.List;

/** What reading a file tells, short enough to compare. */
final class FaultsOf {
    private FaultsOf() {}

    static Part sound(PartText text) {
        return read(text).part();
    }

    static List<String> remarks(PartText text) {
        return read(text).remarks().stream()
                .map(remark -> remark.path() + " " + remark.code())
                .toList();
    }

    private static PartReading.Read read(PartText text) {
        PartReading reading = PartFile.read(text.toString());
        assertThat(reading).as(text.toString()).isInstanceOf(PartReading.Read.class);
        return (PartReading.Read) reading;
    }

    /** Each fault as its path and its code; none when the part is sound. */
    static List<String> of(PartText text) {
        return of(text.toString());
    }

    static List<String> of(String text) {
        return list(text).stream()
                .map(fault -> fault.path() + " " + fault.code())
                .toList();
    }

    static List<Fault> list(String text) {
        return switch (PartFile.read(text)) {
            case PartReading.Read read -> List.of();
            case PartReading.Faulty faulty -> faulty.faults();
        };
    }
}
