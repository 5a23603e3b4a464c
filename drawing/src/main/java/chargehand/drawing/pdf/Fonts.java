package chargehand.drawing.pdf;

import chargehand.drawing.lettering.Weight;
import java.io.IOException;
import java.io.InputStream;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.font.PDType0Font;

/** The weights of the font that one document uses, each loaded when first used and cut down to what was used. */
final class Fonts {
    private final PDDocument document;
    private final Map<Weight, PDFont> loaded = new EnumMap<>(Weight.class);

    Fonts(PDDocument document) {
        this.document = document;
    }

    PDFont of(Weight weight) throws IOException {
        PDFont font = loaded.get(weight);
        if (font == null) {
            font = load(weight);
            loaded.put(weight, font);
        }
        return font;
    }

    /** Letters are never joined into one sign: "fi" stays two letters, as wide as measured and found by whoever searches. */
    private PDFont load(Weight weight) throws IOException {
        try (InputStream file = weight.open()) {
            TrueTypeFont letters = new TTFParser().parse(new RandomAccessReadBuffer(file));
            letters.setEnableGsub(false);
            document.registerTrueTypeFontForClosing(letters);
            return PDType0Font.load(document, letters, true);
        }
    }
}
