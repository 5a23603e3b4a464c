package chargehand.web.drawing;

import chargehand.book.job.Job;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/** A file to start from, so that nobody begins before an empty page. */
enum Starts {
    TURNED("a turned part"),
    BLOCK("a block or plate");

    private final String label;

    Starts(String label) {
        this.label = label;
    }

    String label() {
        return label;
    }

    /** The word for it in an address. */
    String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The start of that word, a turned part for any other. */
    static Starts of(String word) {
        return word.equals(BLOCK.word()) ? BLOCK : TURNED;
    }

    /** The file, numbered for the job. */
    String text(Job job) {
        try (InputStream file = Starts.class.getResourceAsStream(word() + ".yaml")) {
            if (file == null) {
                throw new IOException("the start " + word() + " is missing from the program");
            }
            return new String(file.readAllBytes(), StandardCharsets.UTF_8)
                    .replace("NUMBER", job.number().toString());
        } catch (IOException unread) {
            throw new UncheckedIOException(unread);
        }
    }
}
