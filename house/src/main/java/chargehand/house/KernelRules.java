package chargehand.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchRule;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZonedDateTime;
import java.util.Random;

/**
 * What holds besides {@link HouseRules} in the modules that only compute (measure, trade, part, drawing, method): the same
 * question has the same answer at any hour, on any machine, and nothing is printed on the way.
 */
public final class KernelRules {
    @ArchTest
    static final ArchRule NOTHING_IS_PRINTED = noClasses()
            .should()
            .accessField(System.class, "out")
            .orShould()
            .accessField(System.class, "err")
            .orShould()
            .callMethod(Throwable.class, "printStackTrace");

    @ArchTest
    static final ArchRule NO_CLOCK = noClasses()
            .should()
            .callMethod(System.class, "currentTimeMillis")
            .orShould()
            .callMethod(System.class, "nanoTime")
            .orShould()
            .callMethod(Instant.class, "now")
            .orShould()
            .callMethod(LocalDate.class, "now")
            .orShould()
            .callMethod(LocalDateTime.class, "now")
            .orShould()
            .callMethod(ZonedDateTime.class, "now")
            .orShould()
            .dependOnClassesThat()
            .areAssignableTo(Clock.class);

    @ArchTest
    static final ArchRule NO_CHANCE =
            noClasses().should().callMethod(Math.class, "random").orShould().callConstructor(Random.class);

    @ArchTest
    static final ArchRule NO_MACHINE_SETTINGS = noClasses()
            .should()
            .callMethod(System.class, "getenv", String.class)
            .orShould()
            .callMethod(System.class, "getProperty", String.class)
            .orShould()
            .callMethod(System.class, "exit", int.class);

    @ArchTest
    static final ArchRule STATICS_REMEMBER_NOTHING =
            fields().that().areStatic().should().beFinal().because("a static that changes is a hidden question");

    private KernelRules() {}
}
