package chargehand.web;

import chargehand.house.HouseRules;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.junit.ArchTests;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "chargehand.web", importOptions = DoNotIncludeTests.class)
final class WebArchitectureTest {
    @ArchTest
    static final ArchTests HOUSE = ArchTests.in(HouseRules.class);

    @ArchTest
    static final ArchRule USES = HouseRules.usesOnly(
            "chargehand.web",
            "chargehand.measure..",
            "chargehand.trade..",
            "chargehand.part..",
            "chargehand.drawing..",
            "chargehand.method..",
            "chargehand.book..",
            "chargehand.paper..",
            "java.io",
            "java.net..",
            "java.nio..",
            "java.time..",
            "java.security",
            "java.util.concurrent..",
            "io.javalin..",
            "jakarta.servlet..",
            "org.eclipse.jetty..",
            "gg.jte..",
            "com.fasterxml.jackson..",
            "kotlin..",
            "org.slf4j..");
}
