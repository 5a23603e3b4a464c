package chargehand.drawing.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.drawing.DemoParts;
import chargehand.drawing.picture.Box;
import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.Point;
import chargehand.drawing.sheet.PartDrawing;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;

/** The demo parts as PDF: what another program reads out of the file is what the part says, at the place it was put. */
final class PdfSheetTest {
    private static final double NEAR = 0.01;

    private static PDDocument pdf(Picture sheet) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Pdf.write(List.of(sheet), out);
        return Loader.loadPDF(out.toByteArray());
    }

    @ParameterizedTest
    @MethodSource("chargehand.drawing.DemoParts#names")
    void write_aDemoPart_keepsEveryWordAsAWordAtItsPlaceAndSize(String name) throws IOException {
        Picture sheet = PartDrawing.of(DemoParts.read(name));
        List<Mark.Words> put = sheet.marks().stream()
                .filter(Mark.Words.class::isInstance)
                .map(Mark.Words.class::cast)
                .toList();

        try (PDDocument document = pdf(sheet)) {
            List<PrintedWords.Printed> printed = PrintedWords.of(document);

            assertThat(printed).hasSameSizeAs(put);
            for (int i = 0; i < put.size(); i++) {
                assertThat(printed.get(i).text()).isEqualTo(put.get(i).text());
                assertThat(printed.get(i).size())
                        .isCloseTo(put.get(i).lettering().size(), within(NEAR));
                assertThat(printed.get(i).at().distance(start(put.get(i))))
                        .as(put.get(i).text())
                        .isLessThan(NEAR);
            }
        }
    }

    private static Point start(Mark.Words words) {
        double width = words.lettering().width(words.text());
        double back = switch (words.align()) {
            case LEFT -> 0;
            case MIDDLE -> width / 2;
            case RIGHT -> width;
        };
        return words.at().towards(words.turned(), -back);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "printed-sizes.csv", delimiter = '|', useHeadersInDisplayName = true)
    void write_aDemoPart_printsItsSizes(String part, String what, @Nullable String sign, String words)
            throws IOException {
        List<String> wanted = List.of(words.split(";"));
        Picture sheet = PartDrawing.of(DemoParts.read(part));
        try (PDDocument document = pdf(sheet)) {
            List<PrintedWords.Printed> printed = PrintedWords.of(document);

            assertThat(IntStream.rangeClosed(0, printed.size() - wanted.size())
                            .mapToObj(first -> printed.subList(first, first + wanted.size())))
                    .as(what)
                    .anyMatch(some -> wanted.equals(texts(some)) && isSigned(sheet, sign, some.getFirst()));
        }
    }

    private static List<String> texts(List<PrintedWords.Printed> some) {
        return some.stream().map(PrintedWords.Printed::text).toList();
    }

    /** Whether the sign is drawn close to where the words begin: a circle or a square, not a letter. */
    private static boolean isSigned(Picture sheet, @Nullable String sign, PrintedWords.Printed words) {
        return sign == null
                || sheet.marks().stream()
                        .filter(mark -> sign.equals("Ø") ? mark instanceof Mark.Circle : mark instanceof Mark.Stroke)
                        .map(Box::of)
                        .anyMatch(box ->
                                box.height() < words.size() && box.centre().distance(words.at()) < 1.5 * words.size());
    }

    @Test
    void printedSizes_areGivenForEveryDemoPart() throws IOException {
        try (InputStream file = PdfSheetTest.class.getResourceAsStream("printed-sizes.csv")) {
            String rows = new String(Objects.requireNonNull(file).readAllBytes(), StandardCharsets.UTF_8);

            assertThat(DemoParts.names()).allSatisfy(name -> assertThat(rows).contains("\n" + name + "|"));
        }
    }

    @ParameterizedTest
    @MethodSource("chargehand.drawing.DemoParts#names")
    void write_aDemoPart_carriesTheLettersAndNoPictures(String name) throws IOException {
        try (PDDocument document = pdf(PartDrawing.of(DemoParts.read(name)))) {
            PDPage page = document.getPage(0);
            assertThat(page.getResources().getFontNames()).isNotEmpty();
            for (COSName key : page.getResources().getFontNames()) {
                PDFont font = page.getResources().getFont(key);
                assertThat(font.isEmbedded()).isTrue();
                assertThat(font.getName()).matches("[A-Z]{6}\\+IBMPlexSans.*");
            }
            assertThat(page.getResources().getXObjectNames()).isEmpty();
        }
    }
}
