package chargehand.app;

import chargehand.house.HouseRules;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.junit.ArchTests;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "chargehand.app", importOptions = DoNotIncludeTests.class)
final class AppArchitectureTest {
    @ArchTest
    static final ArchTests HOUSE = ArchTests.in(HouseRules.class);

    @ArchTest
    static final ArchRule USES = HouseRules.usesOnly(
            "chargehand.app",
            "chargehand..",
            "java.io",
            "java.net..",
            "java.nio..",
            "java.time..",
            "java.util.concurrent..",
            "org.slf4j..");
}
