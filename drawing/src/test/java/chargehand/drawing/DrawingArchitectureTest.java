package chargehand.drawing;

import chargehand.house.HouseRules;
import chargehand.house.KernelRules;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.junit.ArchTests;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "chargehand.drawing", importOptions = DoNotIncludeTests.class)
final class DrawingArchitectureTest {
    @ArchTest
    static final ArchTests HOUSE = ArchTests.in(HouseRules.class);

    @ArchTest
    static final ArchTests KERNEL = ArchTests.in(KernelRules.class);

    @ArchTest
    static final ArchRule USES = HouseRules.usesOnly(
            "chargehand.drawing",
            "chargehand.measure..",
            "chargehand.trade..",
            "chargehand.part..",
            "java.io",
            "java.nio.charset",
            "java.time",
            "org.apache.pdfbox..",
            "org.apache.fontbox..");
}
