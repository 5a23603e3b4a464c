package chargehand.method.proved;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.plan.Planned.Reason;
import chargehand.method.rack.yaml.RackFile;
import chargehand.method.rack.yaml.RackRead;
import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Parts as they come in at a repair shop, planned on the demo kit from a rack as one would like it, and what a turner insists on
 * for each: rules on the method, not a recorded output. All common practice.
 */
class TurnersRulesTest {
    private static final String FOLDER = "/chargehand/method/turner/";
    private static final Kit KIT = DemoKit.kit();
    private static final ProvedPlanner PLANNER =
            new ProvedPlanner(KIT, ((RackRead.Sound) RackFile.read(text("rack.yaml"))).rack());

    /** A rule that a method breaks today stands in the last column with the reason, so that it is taken out when it is mended. */
    @ParameterizedTest(name = "{0}, {1}")
    @CsvFileSource(resources = FOLDER + "made.csv", numLinesToSkip = 1, emptyValue = "")
    void plan_part_keepsEveryRuleATurnerHasForIt(
            String name, int count, int mostSetUps, String rules, @Nullable String brokenToday) {
        Part part = part(name);
        ProvedPlanner.Outcome outcome = PLANNER.plan(part, count);
        assertThat(outcome).isInstanceOf(ProvedPlanner.Outcome.Proved.class);
        var made = new Made(part, ((ProvedPlanner.Outcome.Proved) outcome).method(), KIT, mostSetUps);
        assertThat(made.method().count()).isEqualTo(count);
        var broken = new ArrayList<String>();
        for (CommonRule rule : CommonRule.values()) {
            rule.broken(made).forEach(say -> broken.add(rule + ": " + say));
        }
        for (String rule : rules.split(" ", -1)) {
            TurnersRule.of(rule).broken(made).forEach(say -> broken.add(rule + ": " + say));
        }
        if (brokenToday == null) {
            assertThat(broken).isEmpty();
        } else {
            String rule = brokenToday.substring(0, brokenToday.indexOf(','));
            assertThat(broken)
                    .as("a rule that is kept again leaves the list")
                    .singleElement()
                    .satisfies(say -> assertThat(say).startsWith(rule));
        }
    }

    /** Refused today; a part that is planned one day moves to the others, with its rules. */
    @ParameterizedTest(name = "{0}")
    @CsvFileSource(resources = FOLDER + "refused.csv", numLinesToSkip = 1)
    void plan_partRefusedToday_saysWhyAndWhatWouldDo(String name, String code, String says, String why) {
        assertThat(why).isNotBlank();
        ProvedPlanner.Outcome outcome = PLANNER.plan(part(name), 1);
        assertThat(outcome).isInstanceOfSatisfying(ProvedPlanner.Outcome.NotHere.class, notHere -> {
            List<Reason> reasons = notHere.reasons();
            assertThat(reasons).anySatisfy(reason -> {
                assertThat(reason.code()).hasToString(code);
                assertThat(reason.say()).contains(says);
                assertThat(reason.unlock()).isNotBlank().doesNotContain("[");
            });
        });
    }

    private static Part part(String name) {
        return ((PartReading.Read) PartFile.read(text(name + ".yaml"))).part();
    }

    private static String text(String file) {
        try (InputStream in = TurnersRulesTest.class.getResourceAsStream(FOLDER + file)) {
            return new String(Objects.requireNonNull(in, file).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
