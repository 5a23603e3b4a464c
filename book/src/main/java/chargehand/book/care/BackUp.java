package chargehand.book.care;

import chargehand.book.Entered;
import java.nio.file.Files;
import java.nio.file.Path;

/** Puts a copy of the book away, while people go on working in it. */
public final class BackUp {
    private final Storage storage;

    public BackUp(Storage storage) {
        this.storage = storage;
    }

    /** The copy, a book like any other; refused where a file of that name is already, or its folder is not. */
    public Entered<Path> to(Path copy) {
        Path folder = copy.toAbsolutePath().normalize().getParent();
        if (folder == null || !Files.isDirectory(folder)) {
            return Entered.refused("file", "There is no folder " + folder + " to put the copy in; make it first.");
        }
        if (Files.exists(copy)) {
            return Entered.refused("file", "There is a file " + copy + " already; give the copy another name.");
        }
        storage.copyTo(copy);
        return Entered.done(copy);
    }
}
