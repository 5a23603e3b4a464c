package chargehand.cli;

import chargehand.house.HouseRules;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.junit.ArchTests;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "chargehand.cli", importOptions = DoNotIncludeTests.class)
final class CliArchitectureTest {
    @ArchTest
    static final ArchTests HOUSE = ArchTests.in(HouseRules.class);

    @ArchTest
    static final ArchRule USES = HouseRules.usesOnly(
            "chargehand.cli",
            "chargehand.measure..",
            "chargehand.trade..",
            "chargehand.part..",
            "chargehand.drawing..",
            "chargehand.method..",
            "chargehand.book..",
            "chargehand.paper..",
            "java.io",
            "java.nio..",
            "java.util.concurrent",
            "com.fasterxml.jackson..");
}
