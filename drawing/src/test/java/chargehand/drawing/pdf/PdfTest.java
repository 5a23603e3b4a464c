package chargehand.drawing.pdf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import chargehand.drawing.Sample;
import chargehand.drawing.lettering.Lettering;
import chargehand.drawing.picture.Canvas;
import chargehand.drawing.picture.Picture;
import chargehand.drawing.picture.Point;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.List;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;

final class PdfTest {
    private static final double POINT = 25.4 / 72;

    @Test
    void write_twoPages_keepsWordsAsWordsAndTheirSize() throws IOException {
        byte[] pdf = bytes(List.of(Sample.picture(), new Canvas().picture(210, 297, "Sheet")));

        try (PDDocument document = Loader.loadPDF(pdf)) {
            assertThat(document.getNumberOfPages()).isEqualTo(2);
            assertThat(document.getPage(1).getMediaBox().getHeight() * POINT).isCloseTo(297, within(0.01));
            assertThat(words(document)).contains("Ram&gland<1/2", "1.250");
            assertThat(document.getDocumentInformation().getTitle()).isEqualTo("Every kind of mark");
        }
    }

    @Test
    void write_sameTwice_givesTheSameBytes() throws IOException {
        assertThat(bytes(List.of(Sample.picture()))).isEqualTo(bytes(List.of(Sample.picture())));
    }

    @Test
    void write_words_embedsOnlyTheLettersUsed() throws IOException {
        byte[] pdf = bytes(List.of(Sample.picture()));

        assertThat(pdf.length).isLessThan(30_000);
        try (PDDocument document = Loader.loadPDF(pdf)) {
            PDPage page = document.getPage(0);
            for (var name : page.getResources().getFontNames()) {
                assertThat(page.getResources().getFont(name).isEmbedded()).isTrue();
                assertThat(page.getResources().getFont(name).getName()).matches("[A-Z]{6}\\+IBMPlexSans.*");
            }
        }
    }

    @Test
    void write_aLetterTheFontLacks_putsAQuestionMark() throws IOException {
        Picture picture = new Canvas()
                .words(Lettering.height(5), Point.of(1, 9), "pin \u4e00")
                .picture(40, 10, "unknown letter");

        try (PDDocument document = Loader.loadPDF(bytes(List.of(picture)))) {
            assertThat(words(document)).contains("pin?");
        }
    }

    /** All words without spaces and line ends: the reader of turned words puts its own in. */
    private static String words(PDDocument document) throws IOException {
        return new PDFTextStripper().getText(document).replaceAll("\\s", "");
    }

    private static byte[] bytes(List<Picture> pages) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        Pdf.write(pages, out);
        return out.toByteArray();
    }
}
