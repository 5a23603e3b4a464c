package chargehand.book.care;

import java.nio.file.Path;
import java.util.List;

/** A store on disk that can be copied and looked through. */
public interface Storage {
    /** Where the book lies. */
    Path file();

    /** Writes everything that is in the book now into a new file of its own, which is on the disk when this returns. */
    void copyTo(Path copy);

    /** What is broken in the store itself, a plain sentence each; nothing when all is whole. */
    List<String> faults();
}
