package chargehand.timing;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.OptionalLong;

/**
 * A book being served by {@code ./chargehand serve}, in a process of its own.
 *
 * @param process the program
 * @param out what it prints
 * @param address of its first page
 */
record ServedShop(Process process, BufferedReader out, URI address) implements AutoCloseable {
    /** Starts serving a book and waits until it says where. */
    static ServedShop start(Path launcher, Path book) throws IOException {
        var process = new ProcessBuilder(launcher.toString(), "serve", "--book", book.toString(), "--port", "0")
                .redirectError(ProcessBuilder.Redirect.INHERIT)
                .start();
        BufferedReader out = process.inputReader();
        String said = String.valueOf(out.readLine());
        for (String word : said.split(" ", -1)) {
            if (word.startsWith("http://")) {
                return new ServedShop(process, out, URI.create(word));
            }
        }
        process.destroy();
        throw new IllegalStateException("serving said: " + said);
    }

    /** Reads a page whole and returns how many bytes it has. */
    long read(String page) throws IOException {
        try (InputStream answer = address.resolve(page).toURL().openStream()) {
            return answer.transferTo(OutputStream.nullOutputStream());
        }
    }

    /** The memory it has of the machine (bytes), where the system tells as Linux does. */
    OptionalLong memory() throws IOException {
        Path status = Path.of("/proc", Long.toString(process.pid()), "status");
        List<String> lines = Files.isReadable(status) ? Files.readAllLines(status) : List.of();
        return lines.stream()
                .filter(line -> line.startsWith("VmRSS:"))
                .mapToLong(line -> Long.parseLong(line.replaceAll("[^0-9]", "")) * 1024)
                .findFirst();
    }

    @Override
    public void close() throws IOException {
        process.destroy();
        process.onExit().join();
        out.close();
    }
}
