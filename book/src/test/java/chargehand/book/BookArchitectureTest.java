package chargehand.book;

import chargehand.house.HouseRules;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.junit.ArchTests;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "chargehand.book", importOptions = DoNotIncludeTests.class)
final class BookArchitectureTest {
    @ArchTest
    static final ArchTests HOUSE = ArchTests.in(HouseRules.class);

    @ArchTest
    static final ArchRule USES = HouseRules.usesOnly(
            "chargehand.book",
            "chargehand.measure..",
            "chargehand.trade..",
            "chargehand.part..",
            "chargehand.drawing..",
            "chargehand.method..",
            "java.io",
            "java.nio..",
            "java.sql",
            "javax.sql",
            "java.time..",
            "java.security",
            "java.util.concurrent..",
            "com.fasterxml.jackson.jr..",
            "org.jdbi..",
            "org.sqlite..",
            "org.slf4j..");
}
