package chargehand.drawing.pdf;

import chargehand.drawing.picture.Mark;
import chargehand.drawing.picture.Palette;
import chargehand.drawing.picture.Picture;
import java.io.IOException;
import java.io.OutputStream;
import java.util.List;
import org.apache.pdfbox.pdfwriter.compress.CompressParameters;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.common.PDRectangle;

/**
 * Writes pictures as the pages of a PDF, each page as large as its picture. No date and no chance number goes in, so the
 * same pages give the same bytes.
 */
public final class Pdf {
    static final double POINTS_PER_MM = 72 / 25.4;

    /** Any fixed number does: the file's identity is its content. */
    private static final long DOCUMENT = 1;

    private Pdf() {}

    /** The pages in print colours; {@code out} is left open. */
    public static void write(List<Picture> pages, OutputStream out) throws IOException {
        write(pages, Palette.PRINT, out);
    }

    /** The pages in the given colours; {@code out} is left open. */
    public static void write(List<Picture> pages, Palette palette, OutputStream out) throws IOException {
        if (pages.isEmpty()) {
            throw new IllegalArgumentException("a PDF needs a page");
        }
        try (PDDocument document = new PDDocument()) {
            document.setDocumentId(DOCUMENT);
            document.getDocumentInformation().setTitle(pages.getFirst().title());
            document.getDocumentCatalog().setLanguage("en-GB");
            Fonts fonts = new Fonts(document);
            for (Picture picture : pages) {
                page(document, fonts, picture, palette);
            }
            document.save(out, CompressParameters.DEFAULT_COMPRESSION);
        }
    }

    private static void page(PDDocument document, Fonts fonts, Picture picture, Palette palette) throws IOException {
        PDPage page = new PDPage(
                new PDRectangle((float) (picture.width() * POINTS_PER_MM), (float) (picture.height() * POINTS_PER_MM)));
        document.addPage(page);
        try (PDPageContentStream content = new PDPageContentStream(document, page)) {
            PdfMarks marks = new PdfMarks(content, fonts, palette, picture.height());
            for (Mark mark : picture.marks()) {
                marks.add(mark);
            }
        }
    }
}
