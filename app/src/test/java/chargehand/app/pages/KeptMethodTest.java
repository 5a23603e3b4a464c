package chargehand.app.pages;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.book.Entered;
import chargehand.book.job.JobNumber;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is kept of a method's pages never outlives the method. */
final class KeptMethodTest {
    private static final String METHOD = "/jobs/203/method";
    private static final String BENCH = "/jobs/203/machine/1/1/1";
    private static final JobNumber STUD = JobNumber.parse("203").orElseThrow();

    private static String get(DemoServer shop, String path) throws IOException, InterruptedException {
        try (HttpClient client = HttpClient.newHttpClient()) {
            var ask = HttpRequest.newBuilder(URI.create(shop.address(path))).build();
            return client.send(ask, BodyHandlers.ofString()).body();
        }
    }

    @Test
    void pages_afterPlanningAnew_showTheNewMethodAndNothingOfTheOld() throws IOException, InterruptedException {
        try (DemoServer shop = DemoServer.start()) {
            String before = get(shop, METHOD);
            assertThat(get(shop, METHOD)).isEqualTo(before).contains("small collets");
            assertThat(get(shop, BENCH)).contains("small lathe").contains("<svg");

            assertThat(shop.desk().planMethod().plan(STUD, List.of("without small lathe"), "tester"))
                    .isInstanceOf(Entered.Done.class);

            assertThat(get(shop, METHOD)).contains("Set-up 1").doesNotContain("small lathe, small collets");
            assertThat(get(shop, BENCH)).doesNotContain("small lathe").contains("<svg");
        }
    }
}
