package chargehand.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIOException;

import java.io.IOException;
import java.net.InetAddress;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What other sites and broken programs get. */
final class GuardTest {
    private static final String FORM = "application/x-www-form-urlencoded";

    private static Server server;
    private static HttpClient client;

    @BeforeAll
    static void start() {
        server = EmptyShop.serve();
        client = HttpClient.newHttpClient();
    }

    @AfterAll
    static void stop() {
        client.close();
        server.close();
    }

    private static HttpRequest.Builder ask(String path) {
        return HttpRequest.newBuilder(server.address().resolve(path));
    }

    private static HttpResponse<String> send(HttpRequest.Builder request) throws IOException, InterruptedException {
        return client.send(request.build(), BodyHandlers.ofString());
    }

    @Test
    void page_asked_loadsNothingFromElsewhere() throws IOException, InterruptedException {
        HttpResponse<String> page = send(ask("/"));
        assertThat(page.statusCode()).isEqualTo(200);
        assertThat(page.headers().firstValue("Content-Security-Policy"))
                .hasValueSatisfying(policy -> assertThat(policy)
                        .contains("default-src 'self'", "frame-ancestors 'none'", "form-action 'self'")
                        .doesNotContain("script-src 'unsafe-inline'"));
        assertThat(page.body()).doesNotContain("http://", "https://", "onclick");
    }

    @ParameterizedTest
    @CsvSource({
        "Sec-Fetch-Site, cross-site",
        "Sec-Fetch-Site, same-site",
        "Origin, https://elsewhere.example",
        "Origin, null",
        "X-Nothing, said"
    })
    void post_fromElsewhere_changesNothing(String header, String value) throws IOException, InterruptedException {
        var post = ask("/jobs")
                .header("Content-Type", FORM)
                .header(header, value)
                .POST(BodyPublishers.ofString("asset=Crane&wants=Pin&asker=foreman"));
        HttpResponse<String> answer = send(post);
        assertThat(answer.statusCode()).isEqualTo(403);
        assertThat(answer.body()).contains("nothing was changed");
        assertThat(send(ask("/?stage=all&q=Crane")).body()).contains("0 jobs");
    }

    @Test
    void name_ofAnotherHost_isNotAnswered() throws IOException {
        try (Socket socket =
                new Socket(InetAddress.getLoopbackAddress(), server.address().getPort())) {
            socket.getOutputStream()
                    .write("GET / HTTP/1.1\r\nHost: elsewhere.example\r\nConnection: close\r\n\r\n"
                            .getBytes(StandardCharsets.US_ASCII));
            String answer = new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            assertThat(answer)
                    .startsWith("HTTP/1.1 403")
                    .contains("this machine only")
                    .doesNotContain("Job book</h1>");
        }
    }

    @Test
    void body_beyondTheLimit_isRefused() throws IOException, InterruptedException {
        var post = ask("/sums")
                .header("Content-Type", "application/json")
                .POST(BodyPublishers.ofString("[" + " ".repeat(1_100_000) + "]"));
        assertThat(send(post).statusCode()).isEqualTo(413);
    }

    @Test
    void words_withMarkup_areShownAsWords() throws IOException, InterruptedException {
        var post = ask("/jobs")
                .header("Content-Type", FORM)
                .header("Sec-Fetch-Site", "same-origin")
                .POST(BodyPublishers.ofString("asset=%3Cscript%3Ealert(1)%3C/script%3E&wants=&asker="));
        HttpResponse<String> answer = send(post);
        assertThat(answer.statusCode()).isEqualTo(422);
        assertThat(answer.body()).contains("&lt;script").doesNotContain("<script>alert");
    }

    @ParameterizedTest
    @CsvSource({
        "/nowhere",
        "/jobs/0",
        "/jobs/twelve",
        "/jobs/77",
        "/jobs/77/sheet.pdf",
        "/jobs/77/drawing.dxf",
        "/sums/nonsense",
        "/look/none"
    })
    void address_ofNothing_isToldInPlainWords(String path) throws IOException, InterruptedException {
        HttpResponse<String> answer = send(ask(path));
        assertThat(answer.statusCode()).isEqualTo(404);
        assertThat(answer.body()).contains("<h1>").doesNotContain("Exception", "at chargehand");
    }

    @Test
    void server_closed_answersNoMore() {
        Server other = EmptyShop.serve();
        URI address = other.address();
        other.close();
        assertThat(address.getHost()).isEqualTo("127.0.0.1");
        assertThatIOException()
                .isThrownBy(() -> client.send(HttpRequest.newBuilder(address).build(), BodyHandlers.ofString()));
    }
}
