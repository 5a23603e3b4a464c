package chargehand.method;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import chargehand.house.HouseRules;
import chargehand.house.KernelRules;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.junit.ArchTests;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "chargehand.method", importOptions = DoNotIncludeTests.class)
final class MethodArchitectureTest {
    @ArchTest
    static final ArchTests HOUSE = ArchTests.in(HouseRules.class);

    @ArchTest
    static final ArchTests KERNEL = ArchTests.in(KernelRules.class);

    @ArchTest
    static final ArchRule USES = HouseRules.usesOnly(
            "chargehand.method",
            "chargehand.measure..",
            "chargehand.trade..",
            "chargehand.part..",
            "java.io",
            "java.nio.charset",
            "java.util.concurrent",
            "org.snakeyaml.engine..",
            "org.apache.commons.numbers..");

    @ArchTest
    static final ArchRule REPLAY_KNOWS_NOTHING_OF_THE_SEARCH = noClasses()
            .that()
            .resideInAPackage("chargehand.method.replay..")
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage(
                    "chargehand.method.search..",
                    "chargehand.method.setting..",
                    "chargehand.method.holding..",
                    "chargehand.method.work..",
                    "chargehand.method.task..",
                    "chargehand.method.stock..",
                    "chargehand.method.rack..")
            .because("a proof by the same reasoning proves nothing");
}
