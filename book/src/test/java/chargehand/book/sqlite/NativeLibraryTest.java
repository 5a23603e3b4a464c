package chargehand.book.sqlite;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.sqlite.SQLiteJDBCLoader;
import org.sqlite.util.LibraryLoaderUtil;

final class NativeLibraryTest {
    private static final String PATH = "org.sqlite.lib.path";

    @TempDir
    Path folder;

    @AfterEach
    void forgetThePlace() {
        System.clearProperty(PATH);
    }

    @Test
    void library_unpackedOnce_liesThereForTheNextStart() throws IOException {
        NativeLibrary.unpackInto(folder);
        Path library = Path.of(System.getProperty(PATH), LibraryLoaderUtil.getNativeLibName());
        assertThat(library).hasBinaryContent(packed());
        FileTime longAgo = FileTime.fromMillis(0);
        Files.setLastModifiedTime(library, longAgo);

        System.clearProperty(PATH);
        NativeLibrary.unpackInto(folder);
        assertThat(Files.getLastModifiedTime(library)).isEqualTo(longAgo);
        assertThat(files()).containsExactly(library);
    }

    @Test
    void place_namedByThePersonWhoStartsIt_isRespected() {
        System.setProperty(PATH, "/elsewhere");
        NativeLibrary.unpackInto(folder);
        assertThat(System.getProperty(PATH)).isEqualTo("/elsewhere");
        assertThat(folder).isEmptyDirectory();
    }

    private List<Path> files() throws IOException {
        try (Stream<Path> files = Files.walk(folder)) {
            return files.filter(Files::isRegularFile).toList();
        }
    }

    private static byte[] packed() throws IOException {
        String resource = LibraryLoaderUtil.getNativeLibResourcePath() + "/" + LibraryLoaderUtil.getNativeLibName();
        try (InputStream packed = SQLiteJDBCLoader.class.getResourceAsStream(resource)) {
            return Objects.requireNonNull(packed).readAllBytes();
        }
    }
}
