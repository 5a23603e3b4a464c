package chargehand.app.pages;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A job's drawing in every form it is taken away in. */
@ExtendWith(Harbour.class)
final class DrawingFilesTest {
    private final DemoServer shop;

    DrawingFilesTest(DemoServer shop) {
        this.shop = shop;
    }

    private HttpResponse<String> get(String path) throws IOException, InterruptedException {
        try (HttpClient client = HttpClient.newHttpClient()) {
            var ask = HttpRequest.newBuilder(URI.create(shop.address(path))).build();
            return client.send(ask, BodyHandlers.ofString(StandardCharsets.ISO_8859_1));
        }
    }

    @ParameterizedTest
    @CsvSource({
        "/jobs/202/drawing.pdf, application/pdf, %PDF",
        "/jobs/202/drawing.svg, image/svg+xml, <svg",
        "/jobs/202/drawing.dxf, image/vnd.dxf, AC1009",
        "/jobs/202/part.yaml, application/yaml, outside:"
    })
    void address_ofADrawing_givesItInThatForm(String path, String kind, String within)
            throws IOException, InterruptedException {
        HttpResponse<String> answer = get(path);

        assertThat(answer.statusCode()).isEqualTo(200);
        assertThat(answer.headers().firstValue("Content-Type").orElse("")).startsWith(kind);
        assertThat(answer.body()).contains(within);
    }

    @Test
    void address_ofDxf_offersTheFileUnderTheJobsName() throws IOException, InterruptedException {
        assertThat(get("/jobs/202/drawing.dxf").headers().firstValue("Content-Disposition"))
                .contains("attachment; filename=\"job-202.dxf\"");
    }
}
