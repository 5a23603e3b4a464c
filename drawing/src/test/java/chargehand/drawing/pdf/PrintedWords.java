package chargehand.drawing.pdf;

import chargehand.drawing.picture.Point;
import java.io.IOException;
import java.io.Writer;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.apache.pdfbox.text.TextPosition;

/** Takes the words out of a page as another program would: by its fonts' own tables, in the order they were put there. */
final class PrintedWords extends PDFTextStripper {
    private static final double POINT = 25.4 / 72;

    private final double height;
    private final List<Printed> printed = new ArrayList<>();
    private final StringBuilder current = new StringBuilder();
    private Point at = Point.of(0, 0);
    private double size;

    /**
     * Words that were put on the page in one go.
     *
     * @param at where they begin on the base line (mm from the upper left)
     * @param size of the type (mm)
     */
    record Printed(String text, Point at, double size) {}

    private PrintedWords(double height) {
        this.height = height;
    }

    static List<Printed> of(PDDocument document) throws IOException {
        PrintedWords words = new PrintedWords(document.getPage(0).getMediaBox().getHeight() * POINT);
        try (Writer nowhere = Writer.nullWriter()) {
            words.writeText(document, nowhere);
        }
        return words.printed;
    }

    @Override
    protected void showText(byte[] string) throws IOException {
        current.setLength(0);
        super.showText(string);
        printed.add(new Printed(current.toString(), at, size));
    }

    @Override
    protected void processTextPosition(TextPosition letter) {
        if (current.isEmpty()) {
            at = Point.of(
                    letter.getTextMatrix().getTranslateX() * POINT,
                    height - letter.getTextMatrix().getTranslateY() * POINT);
            size = letter.getFontSize() * POINT;
        }
        current.append(letter.getUnicode());
        super.processTextPosition(letter);
    }
}
