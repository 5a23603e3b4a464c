package chargehand.paper;

import chargehand.house.HouseRules;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.junit.ArchTests;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "chargehand.paper", importOptions = DoNotIncludeTests.class)
final class PaperArchitectureTest {
    @ArchTest
    static final ArchTests HOUSE = ArchTests.in(HouseRules.class);

    @ArchTest
    static final ArchRule USES = HouseRules.usesOnly(
            "chargehand.paper",
            "chargehand.measure..",
            "chargehand.trade..",
            "chargehand.part..",
            "chargehand.drawing..",
            "chargehand.method..",
            "chargehand.book..",
            "java.io",
            "java.nio.charset",
            "java.time..",
            "org.apache.pdfbox..",
            "org.apache.fontbox..",
            "com.google.zxing..");
}
