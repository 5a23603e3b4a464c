package chargehand.cli;

import java.io.BufferedOutputStream;
import java.io.FileDescriptor;
import java.io.FileOutputStream;
import java.io.InputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;

/**
 * Where a command reads and writes; all of it UTF-8, whatever the machine is set to.
 *
 * @param in what is fed in
 * @param out what was asked for, and nothing else
 * @param err what went wrong, and progress
 */
public record Terminal(InputStream in, PrintStream out, PrintStream err) {
    private static final int BUFFER_BYTES = 1 << 16;

    /** The terminal, or the pipes, that the program was started with. */
    public static Terminal ofProcess() {
        return new Terminal(System.in, utf8(FileDescriptor.out), utf8(FileDescriptor.err));
    }

    private static PrintStream utf8(FileDescriptor to) {
        var buffered = new BufferedOutputStream(new FileOutputStream(to), BUFFER_BYTES);
        return new PrintStream(buffered, false, StandardCharsets.UTF_8);
    }

    /** Sends on everything written so far. */
    public void flush() {
        out.flush();
        err.flush();
    }
}
