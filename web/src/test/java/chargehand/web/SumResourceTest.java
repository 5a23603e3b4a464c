package chargehand.web;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.jr.ob.JSON;
import java.io.IOException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The sums over HTTP: what comes back is what the sums themselves answer. */
final class SumResourceTest {
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

    private static HttpResponse<String> post(String path, String json) throws IOException, InterruptedException {
        return client.send(
                HttpRequest.newBuilder(server.address().resolve(path))
                        .header("Content-Type", "application/json")
                        .POST(BodyPublishers.ofString(json))
                        .build(),
                BodyHandlers.ofString());
    }

    /** An inch is 25.4 mm exactly (ISO 31-1:1992 and the 1959 agreement), so 1 3/8 in is 34.925 mm. */
    @Test
    void line_ofOneSum_isAnsweredInBothUnits() throws IOException, InterruptedException {
        var answer = post("/sums", "{\"id\": 7, \"sum\": \"size\", \"ask\": {\"size\": \"1 3/8\"}}");
        assertThat(answer.statusCode()).isEqualTo(200);
        Map<String, Object> line = JSON.std.mapFrom(answer.body());
        assertThat(line).containsEntry("id", 7).containsKeys("answer", "working", "cautions");
        assertThat(answer.body()).contains("34.925");
    }

    @Test
    void lines_goodAndBad_areEachAnsweredInTheirOrder() throws IOException, InterruptedException {
        var answer = post(
                "/sums",
                "[{\"id\": \"a\", \"sum\": \"none\"}, 5, {\"id\": \"b\", \"sum\": \"size\", \"ask\": {\"size\": \"25 mm\"}}]");
        List<Object> lines = JSON.std.listFrom(answer.body());
        assertThat(lines).hasSize(3);
        assertThat(lines.getFirst()).asString().contains("error").contains("none");
        assertThat(lines.get(1)).asString().contains("error");
        assertThat(lines.getLast()).asString().contains("answer");
    }

    @Test
    void ask_ofANamedSum_isAnsweredOrRefusedWithItsField() throws IOException, InterruptedException {
        assertThat(post("/sums/size", "{\"size\": \"1 3/8\"}").body()).contains("34.925");
        var refused = post("/sums/size", "{\"size\": \"nonsense\"}");
        assertThat(refused.statusCode()).isEqualTo(422);
        assertThat(refused.body()).contains("\"field\":\"size\"");
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "nonsense", "5", "\"words\"", "[1e999999999]", "{\"a\": 1} {", "null"})
    void body_thatIsNoLine_isRefusedPlainly(String body) throws IOException, InterruptedException {
        var answer = post("/sums", body);
        assertThat(answer.statusCode()).isIn(200, 400);
        assertThat(answer.body()).contains("error").doesNotContain("Exception");
    }
}
