package chargehand.book.sqlite;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.util.Objects;

/** Copies a book's file while it is in use. */
final class Copying {
    private Copying() {}

    /** Writes the copy under another name first, so that a file of the wanted name is always a whole one. */
    static void copy(Path file, Path copy) throws SQLException, IOException {
        Path folder = Objects.requireNonNull(copy.toAbsolutePath().getParent(), "a file lies in a folder");
        Path part = folder.resolve(copy.getFileName() + ".part");
        Files.deleteIfExists(part);
        try {
            write(file, part);
            sync(part);
            Files.move(part, folder.resolve(copy.getFileName()), StandardCopyOption.ATOMIC_MOVE);
            sync(folder);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    private static void write(Path file, Path part) throws SQLException {
        try (Connection reader = Doors.toRead(file);
                PreparedStatement vacuum = reader.prepareStatement("vacuum into ?")) {
            vacuum.setString(1, part.toAbsolutePath().toString());
            vacuum.execute();
        }
    }

    private static void sync(Path path) throws IOException {
        try (FileChannel channel = FileChannel.open(path, StandardOpenOption.READ)) {
            channel.force(true);
        }
    }
}
