package chargehand.paper.sheet;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.drawing.pdf.Pdf;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Picture;
import chargehand.method.kit.Kit;
import chargehand.method.plan.Method;
import chargehand.method.plan.Operation;
import chargehand.method.plan.SetUp;
import chargehand.method.replay.Replay;
import chargehand.method.start.BeforeStart;
import chargehand.method.start.StopFirst;
import chargehand.paper.stage.StageDrawing;
import chargehand.part.Part;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MethodSheetTest {
    private static final Pattern STANDS_OUT = Pattern.compile(", ([^,]+ out)(?: of the jaws)?\\.");

    @ParameterizedTest
    @CsvSource({"union, 2", "gland-stud, 24", "ram, 1", "shim, 40", "sluice-spindle, 1", "bearing-bush, 1"})
    void pages_demoMethod_everyOperationStandsOnThem(String name, int count) throws IOException {
        Method method = DemoSheets.planned(name, count).method();
        byte[] pdf = pdf(name, method);
        String text = text(pdf);
        List<String> words = List.of(text.split("\\s+"));
        assertThat(text).contains(method.title()).contains(method.stock().piece());
        for (SetUp setUp : method.setUps()) {
            assertThat(text)
                    .contains("Set-up " + setUp.number() + " of "
                            + method.setUps().size());
            for (String check : BeforeStart.of(method, setUp, DemoSheets.kit())) {
                assertThat(words).as("set-up %d", setUp.number()).containsAll(List.of(check.split("[ \u00a0]")));
            }
            for (Operation operation : setUp.operations()) {
                assertThat(squeezed(text)).contains(squeezed(operation.say()));
                assertThat(StopFirst.of(operation))
                        .allSatisfy(stop -> assertThat(squeezed(text)).contains(squeezed("Stop: " + stop)));
            }
        }
        boolean holds = method.setUps().stream()
                .flatMap(setUp -> setUp.operations().stream())
                .anyMatch(Operation::hold);
        assertThat(text.contains("STOP. Do not go on")).isEqualTo(holds);
    }

    /** What the picture of a set-up shows standing out is what the words tell the hand to set. */
    @ParameterizedTest
    @CsvSource({"union, 2", "gland-stud, 24", "ram, 1", "sluice-spindle, 1", "bearing-bush, 1", "metric-stud, 2"})
    void stages_demoMethod_standOutAsTheWordsSay(String name, int count) throws IOException {
        Part part = DemoSheets.part(name);
        Kit kit = DemoSheets.kit();
        Method method = DemoSheets.planned(name, count).method();
        List<Optional<Picture>> pictures =
                new StageDrawing(part, kit).all(method, Replay.of(part, method, kit), 150, 70);
        var compared = new ArrayList<String>();
        for (int i = 0; i < pictures.size(); i++) {
            Picture picture = pictures.get(i).orElseThrow();
            for (String said : standsOut(method.setUps().get(i))) {
                assertThat(words(picture)).as("set-up %d", i + 1).contains(said);
                compared.add(said);
            }
        }
        assertThat(compared).isNotEmpty();
    }

    private static List<String> standsOut(SetUp setUp) {
        return setUp.instructions().stream()
                .map(STANDS_OUT::matcher)
                .filter(Matcher::find)
                .map(found -> found.group(1))
                .toList();
    }

    private static List<String> words(Picture picture) {
        return picture.marks().stream()
                .filter(Mark.Words.class::isInstance)
                .map(mark -> ((Mark.Words) mark).text())
                .toList();
    }

    @Test
    void pages_twice_areTheSameBytes() throws IOException {
        Method method = DemoSheets.planned("union", 2).method();
        assertThat(pdf("union", method)).isEqualTo(pdf("union", method));
    }

    private static byte[] pdf(String name, Method method) throws IOException {
        Kit kit = DemoSheets.kit();
        Part part = DemoSheets.part(name);
        var proved = new Sheets.Proved(part, method, Replay.of(part, method, kit));
        var code = Optional.of(new ScanCode("http://127.0.0.1:7414/jobs/214"));
        List<Picture> pages = Sheets.method(proved, kit, "Job 214", code);
        var out = new ByteArrayOutputStream();
        Pdf.write(pages, out);
        Path folder = Files.createDirectories(Path.of("target", "sheets"));
        Files.write(folder.resolve(name + ".pdf"), out.toByteArray());
        return out.toByteArray();
    }

    private static String text(byte[] pdf) throws IOException {
        try (PDDocument document = Loader.loadPDF(pdf)) {
            return new PDFTextStripper().getText(document);
        }
    }

    /** Words as they are read, whatever the lines they were broken into. */
    private static String squeezed(String text) {
        return text.replaceAll("\\s+", "");
    }
}
