package chargehand.drawing.lettering;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.EnumMap;
import java.util.Map;
import org.apache.fontbox.ttf.CmapLookup;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.io.RandomAccessReadBuffer;

/** How far each character of a weight moves the pen, in parts of the letter size. Read once, when first asked for. */
final class Advances {
    private static final Map<Weight, Advances> READ = new EnumMap<>(Weight.class);

    private final double[] latin = new double[LATIN];
    private static final int LATIN = 0x180;

    private final CmapLookup glyphs;
    private final TrueTypeFont font;
    private final double unitsPerEm;

    private Advances(TrueTypeFont font) throws IOException {
        this.font = font;
        glyphs = font.getUnicodeCmapLookup();
        unitsPerEm = font.getUnitsPerEm();
        for (int character = 0; character < LATIN; character++) {
            latin[character] = advance(character);
        }
    }

    static synchronized Advances of(Weight weight) {
        return READ.computeIfAbsent(weight, Advances::read);
    }

    private static Advances read(Weight weight) {
        try (InputStream file = weight.open()) {
            return new Advances(new TTFParser().parse(new RandomAccessReadBuffer(file)));
        } catch (IOException unread) {
            throw new UncheckedIOException("the font " + weight.file() + " cannot be read", unread);
        }
    }

    /** Whether the font has a shape for this character. */
    synchronized boolean has(int character) {
        return glyphs.getGlyphId(character) != 0;
    }

    /** The advance of one character, that of the font's stand-in where it has no shape for it. */
    double of(int character) {
        return character < LATIN ? latin[character] : slow(character);
    }

    private synchronized double slow(int character) {
        try {
            return advance(character);
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }

    private double advance(int character) throws IOException {
        return font.getAdvanceWidth(glyphs.getGlyphId(character)) / unitsPerEm;
    }
}
