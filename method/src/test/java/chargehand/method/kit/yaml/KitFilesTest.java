package chargehand.method.kit.yaml;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.part.yaml.tree.ReadingFault;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each fault by itself, made by changing one place of the demo kit. */
final class KitFilesTest {
    private static List<FileFault> faults(Map<String, String> files) {
        return switch (KitFiles.read(files)) {
            case KitRead.Sound sound -> List.of();
            case KitRead.Refused(var faults) -> faults;
        };
    }

    /** The demo kit with one text of one file changed. */
    private static Map<String, String> changed(String file, String from, String to) {
        Map<String, String> files = new TreeMap<>(DemoKit.files());
        String text = DemoKit.file(file);
        assertThat(text).contains(from);
        files.put(file, text.replaceFirst(Pattern.quote(from), to));
        return files;
    }

    private static FileFault onlyFault(String file, String from, String to) {
        List<FileFault> faults = faults(changed(file, from, to));
        assertThat(faults).hasSize(1);
        assertThat(faults.getFirst().file()).isEqualTo(file);
        return faults.getFirst();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '~',
            value = {
                // file | from | to | path | code | the sentence holds
                "small-lathe.yaml | dogs: 1 1/2 | dogz: 1 1/2 | dogz | KEY_UNKNOWN | Perhaps dogs is meant",
                "saw.yaml | kerf: 5/64 | kerf: wide | kerf | UNREADABLE | 'wide' is not a length",
                "saw.yaml | kerf: 5/64 | kerf: 0 | kerf | UNREADABLE | more than nought",
                "saw.yaml | kerf: 5/64 | kerf: [1, 2] | kerf | WRONG_KIND | a single value, not a list",
                "saw.yaml | out-of-square: 1/32 | out-of-square: -1 | out-of-square | UNREADABLE | less than nought",
                "saw.yaml | unit: in | unit: furlong | unit | UNREADABLE | write mm or in",
                "bench.yaml | width: 5 | width: 5, width: 6 | vices[1].width | KEY_TWICE | stands here again",
                "small-lathe.yaml | power: 3/4 hp | power: 3/4 | power | UNREADABLE | hp",
                "small-lathe.yaml | power: 3/4 hp | power: -1 hp | power | UNREADABLE | less than a power can be",
                "small-lathe.yaml | power: 3/4 hp | power: 0 hp | power | UNREADABLE | more than nought",
                "small-lathe.yaml | 27, 45 | 27, fast | speeds[2] | UNREADABLE | 'fast'",
                "small-lathe.yaml | 27, 45 | 27, 0 | speeds[2] | UNREADABLE | no speed of a spindle",
                "small-lathe.yaml | over-slide: 5 3/4 | over-slide: 12 | swing | CANNOT_BE | swing over the slide is more",
                "small-lathe.yaml | 8 tpi | 8 | screw-cutting.leadscrew | UNREADABLE | 8 tpi",
                "small-lathe.yaml | [20, 25 | [2, 25 | screw-cutting.wheels[1] | UNREADABLE | from 12 to 150",
                "small-lathe.yaml | most-pairs: 2 | most-pairs: 5 | screw-cutting.quadrant.most-pairs | UNREADABLE | from 1 to 3",
                "small-lathe.yaml | reads: radius | reads: depth | dials.cross.reads | UNREADABLE | diameter or radius",
                "small-lathe.yaml | turn: .1, reads | turn: .0001, reads | dials.cross | CANNOT_BE | a turn of at least one",
                "small-lathe.yaml | 1/8 to 3 1/2 | 3 1/2 | chucks[1].outside | UNREADABLE | with to between them",
                "small-lathe.yaml | 1/8 to 3 1/2 | 3 1/2 to 1/8 | chucks[1].outside | UNREADABLE | runs backwards",
                "small-lathe.yaml | jaws: 3 | jaws: 5 | chucks[1].jaws | UNREADABLE | write 3, 4 or 6",
                "small-lathe.yaml | independent: true | independent: perhaps | chucks[2].independent | UNREADABLE | yes or no",
                "small-lathe.yaml | name: 6 in four-jaw | name: 4 in three-jaw | chucks[2].name | NAME_TWICE | stands above already",
                "small-lathe.yaml | centre: dead | centre: live | tailstock.centre | UNREADABLE | dead or revolving",
                "large-lathe.yaml | turns: 1/12 | turns: 0 | screw-cutting.gearbox[1].turns | UNREADABLE | more than nought",
                "mill.yaml | worm: 40 | worm: none | dividing-head.worm | UNREADABLE | whole number",
                "mill.yaml | circles: [15, 16, 17, 18, 19, 20] | circles: [] | dividing-head.plates[1].circles | NOTHING_WRITTEN | at least one",
                "tooling.yaml | knife: right-hand | kniff: right-hand | lathe-tools[1].kniff | KEY_UNKNOWN | Perhaps knife is meant",
                "tooling.yaml | hand: right, nose: 1/64 | hand: both, nose: 1/64 | lathe-tools[1].hand | UNREADABLE | right or left",
                "tooling.yaml | number 60 to 1 | number 99 to 1 | drills[3] | UNREADABLE | #99",
                "tooling.yaml | letter A to Z | letter A to 9 | drills[4] | UNREADABLE | letter",
                "tooling.yaml | metric 1 to 13 by 0.1 | metric 13 to 1 by 0.1 | drills[5] | UNREADABLE | smallest first",
                "tooling.yaml | metric 1 to 13 by 0.1 | metric 1 to 13 by 0.001 | drills[5] | UNREADABLE | at most 1000",
                "tooling.yaml | 1/4 BSW | 1/4 BXW | taps[1] | UNREADABLE | does not name a thread",
                "tooling.yaml | angle: 90 | angle: 190 | countersinks[1].angle | UNREADABLE | between 0° and 180°",
                "gauges.yaml | limits: H7 | limits: h7 | gauges[18].limits | UNREADABLE | class of a shaft",
                "gauges.yaml | range: 0 to 1 | range: one | gauges[5].range | UNREADABLE | no span",
            })
    void read_oneFault_placeAndSentence(String file, String from, String to, String path, String code, String says) {
        FileFault found = onlyFault(file, from, to);
        assertThat(found.fault().code().name()).as(found.toString()).isEqualTo(code);
        assertThat(found.fault().say()).contains(says);
        assertThat(found.fault().path()).isEqualTo(path);
        assertThat(found.fault().line()).as(found.toString()).isEqualTo(lineOf(file, from));
    }

    /** The line in which the text that is changed stands. */
    private static int lineOf(String file, String text) {
        String whole = DemoKit.file(file);
        return (int) whole.substring(0, whole.indexOf(text))
                        .chars()
                        .filter(c -> c == '\n')
                        .count()
                + 1;
    }

    @Test
    void read_keyMissing_saidWhere() {
        FileFault found = onlyFault("saw.yaml", "kerf: 5/64\n", "");
        assertThat(found.fault().code()).isEqualTo(ReadingFault.KEY_MISSING);
        assertThat(found.fault().say()).isEqualTo("'kerf' is missing here.");
    }

    @Test
    void read_severalFaultsInSeveralFiles_allAtOnce() {
        Map<String, String> files = changed("saw.yaml", "kerf: 5/64", "kerf: wide");
        files.computeIfPresent("saw.yaml", (name, text) -> text.replace("largest: 7", "larges: 7"));
        files.put("bench.yaml", DemoKit.file("bench.yaml").replace("opening: 6", "opening: wide"));
        assertThat(faults(files))
                .extracting(fault -> fault.file() + " " + fault.fault().line() + " "
                        + fault.fault().code())
                .containsExactly(
                        "bench.yaml 4 UNREADABLE",
                        "saw.yaml 2 KEY_MISSING",
                        "saw.yaml 4 KEY_UNKNOWN",
                        "saw.yaml 5 UNREADABLE");
    }

    @Test
    void read_twoMachinesOfOneName_secondRefused() {
        Map<String, String> files = DemoKit.files();
        files.put("saw-2.yaml", DemoKit.file("saw.yaml").replace("saw: saw", "saw: Saw"));
        List<FileFault> faults = faults(files);
        assertThat(faults).hasSize(1);
        assertThat(faults.getFirst().file()).isEqualTo("saw.yaml");
        assertThat(faults.getFirst().fault().code()).isEqualTo(KitFault.NAME_TWICE);
        assertThat(faults.getFirst().fault().say()).contains("saw-2.yaml");
        assertThat(faults.getFirst().fault().line()).isEqualTo(2);
    }

    @Test
    void read_neitherMachineNorTooling_saysWhatWouldDo() {
        Map<String, String> files = DemoKit.files();
        files.put("notes.yaml", "unit: mm\n");
        FileFault found = faults(files).getFirst();
        assertThat(found.fault().code()).isEqualTo(ReadingFault.KEY_MISSING);
        assertThat(found.fault().say()).contains("lathe, mill, radial-drill, saw, bench, tooling");
    }

    @Test
    void read_notYaml_saysLine() {
        Map<String, String> files = DemoKit.files();
        files.put("saw.yaml", "saw: saw\nunit: [in\n");
        assertThat(faults(files).getFirst().fault().code()).isEqualTo(ReadingFault.LAYOUT);
    }

    @Test
    void read_nothing_noMachineAndNoTooling() {
        assertThat(faults(Map.of()))
                .extracting(fault -> fault.fault().code().name())
                .containsExactly("NO_MACHINE", "NO_TOOLING");
    }

    @Test
    void read_onlyTooling_noMachine() {
        Map<String, String> files = Map.of("tooling.yaml", "tooling: chest\nunit: mm\n");
        assertThat(faults(files))
                .extracting(fault -> fault.fault().code().name())
                .containsExactly("NO_MACHINE");
    }
}
