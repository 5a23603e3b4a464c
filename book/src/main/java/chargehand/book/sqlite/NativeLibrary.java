package chargehand.book.sqlite;

import chargehand.book.store.BookUnusable;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.LibraryLoaderUtil;

/**
 * The part of SQLite that is not Java. Left alone, the driver unpacks it anew into the temporary folder at every start,
 * which costs time and, after a kill, leaves it lying there. Unpacked once, it is found where it is.
 */
public final class NativeLibrary {
    private static final String PATH = "org.sqlite.lib.path";

    private NativeLibrary() {}

    /**
     * Unpacks the library for this machine into a folder, unless it lies there already, and has the driver take it from
     * there. To be called before the first book is opened; a place named by the system property {@value #PATH} is respected,
     * and on a machine for which the driver brings no library nothing is done.
     *
     * @param folder one that outlives the program; each version of the library has a folder of its own in it
     */
    public static void unpackInto(Path folder) {
        String name = LibraryLoaderUtil.getNativeLibName();
        String resource = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + name;
        try (InputStream packed = SQLiteJDBCLoader.class.getResourceAsStream(resource)) {
            if (packed != null && System.getProperty(PATH) == null) {
                Path home = Files.createDirectories(folder.resolve("sqlite-" + SQLiteJDBCLoader.getVersion()));
                unpack(packed, home.resolve(name));
                System.setProperty(PATH, home.toString());
            }
        } catch (IOException broken) {
            throw new BookUnusable("SQLite's library cannot be unpacked into " + folder + ": " + broken, broken);
        }
    }

    /** Another program that unpacks at the same moment never sees half a library. */
    private static void unpack(InputStream packed, Path library) throws IOException {
        if (Files.notExists(library)) {
            Path part = Files.createTempFile(library.getParent(), "unpacking", null);
            Files.copy(packed, part, StandardCopyOption.REPLACE_EXISTING);
            Files.move(part, library, StandardCopyOption.ATOMIC_MOVE);
        }
    }
}
