package chargehand.timing;

import java.io.BufferedReader;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.net.http.WebSocket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionStage;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/** One page in the Chromium that is installed on this machine, driven through its debugging socket. */
final class BrowserTab implements AutoCloseable {
    private static final List<String> PLACES =
            List.of("/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome", "/snap/bin/chromium");
    private static final Pattern LISTENS = Pattern.compile("ws://(127\\.0\\.0\\.1:[0-9]+)/");
    private static final Pattern PAGE =
            Pattern.compile("\"type\": \"page\".*?\"webSocketDebuggerUrl\": \"([^\"]+)\"", Pattern.DOTALL);
    private static final Pattern VALUE = Pattern.compile("\"value\":(-?[0-9.e+-]+)");
    private static final int LONGEST_SECONDS = 30;

    private final Process process;
    private final WebSocket socket;
    private final BlockingQueue<String> answers;
    private int asked;

    private BrowserTab(Process process, WebSocket socket, BlockingQueue<String> answers) {
        this.process = process;
        this.socket = socket;
        this.answers = answers;
    }

    /** Where the browser is; empty where there is none. */
    static Optional<Path> installed() {
        return Stream.concat(Optional.ofNullable(System.getenv("CHROMIUM")).stream(), PLACES.stream())
                .map(Path::of)
                .filter(Files::isExecutable)
                .findFirst();
    }

    /** Starts the browser with a profile of its own. */
    static BrowserTab open(Path program, Path scratch) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        program.toString(),
                        "--headless",
                        "--no-sandbox",
                        "--disable-gpu",
                        "--no-first-run",
                        "--disable-background-networking",
                        "--remote-debugging-port=0",
                        "--user-data-dir=" + scratch.resolve("browser"),
                        "about:blank")
                .redirectErrorStream(true)
                .start();
        HttpClient client = HttpClient.newHttpClient();
        var answers = new LinkedBlockingQueue<String>();
        WebSocket socket = client.newWebSocketBuilder()
                .buildAsync(page(client, host(process.inputReader())), new Listening(answers))
                .join();
        return new BrowserTab(process, socket, answers);
    }

    private static String host(BufferedReader out) throws IOException {
        for (String line = out.readLine(); line != null; line = out.readLine()) {
            Matcher listens = LISTENS.matcher(line);
            if (listens.find()) {
                return listens.group(1);
            }
        }
        throw new IOException("the browser ended before it listened");
    }

    private static URI page(HttpClient client, String host) throws IOException, InterruptedException {
        var request = HttpRequest.newBuilder(URI.create("http://" + host + "/json/list"))
                .build();
        Matcher page =
                PAGE.matcher(client.send(request, BodyHandlers.ofString()).body());
        if (!page.find()) {
            throw new IOException("the browser has no page");
        }
        return URI.create(page.group(1));
    }

    /** Opens an address and waits until the page and its scripts are there. */
    void go(String address) throws InterruptedException {
        ask("Page.navigate", "{\"url\":" + quoted(address) + "}");
        number(
                "new Promise(done => { const look = () => location.href !== 'about:blank'"
                        + " && document.readyState === 'complete' ? done(1) : setTimeout(look, 20); look(); })",
                "");
    }

    /** What an expression comes to, a promise when it is kept. */
    double number(String expression, String before) throws InterruptedException {
        String script = "(async () => {" + before + "\nreturn await (" + expression + "); })()";
        String answer = ask(
                "Runtime.evaluate",
                "{\"awaitPromise\":true,\"returnByValue\":true,\"expression\":" + quoted(script) + "}");
        Matcher value = VALUE.matcher(answer);
        if (!value.find()) {
            throw new IllegalStateException("the browser said: " + answer);
        }
        return Double.parseDouble(value.group(1));
    }

    private String ask(String method, String params) throws InterruptedException {
        int id = ++asked;
        String message = "{\"id\":" + id + ",\"method\":\"" + method + "\",\"params\":" + params + "}";
        socket.sendText(message, true).join();
        while (true) {
            String answer = answers.poll(LONGEST_SECONDS, TimeUnit.SECONDS);
            if (answer == null) {
                throw new IllegalStateException("the browser does not answer " + method);
            }
            if (answer.startsWith("{\"id\":" + id + ",")) {
                return answer;
            }
        }
    }

    /** A text as JSON and scripts write it. */
    static String quoted(String text) {
        var quoted = new StringBuilder("\"");
        text.chars()
                .forEach(c -> quoted.append(
                        c < ' ' || c == '"' || c == '\\' || c > '~'
                                ? String.format(Locale.ROOT, "\\u%04x", c)
                                : String.valueOf((char) c)));
        return quoted.append('"').toString();
    }

    @Override
    public void close() {
        socket.abort();
        process.destroy();
        process.onExit().join();
    }

    /** Puts together what comes in pieces. */
    private static final class Listening implements WebSocket.Listener {
        private final BlockingQueue<String> answers;
        private final StringBuilder piece = new StringBuilder();

        Listening(BlockingQueue<String> answers) {
            this.answers = answers;
        }

        @Override
        public CompletionStage<?> onText(WebSocket socket, CharSequence data, boolean last) {
            piece.append(data);
            if (last) {
                answers.add(piece.toString());
                piece.setLength(0);
            }
            socket.request(1);
            return CompletableFuture.completedStage(null);
        }
    }
}
