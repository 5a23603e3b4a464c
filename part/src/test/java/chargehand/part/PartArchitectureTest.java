package chargehand.part;

import chargehand.house.HouseRules;
import chargehand.house.KernelRules;
import com.tngtech.archunit.core.importer.ImportOption.DoNotIncludeTests;
import com.tngtech.archunit.junit.AnalyzeClasses;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.junit.ArchTests;
import com.tngtech.archunit.lang.ArchRule;

@AnalyzeClasses(packages = "chargehand.part", importOptions = DoNotIncludeTests.class)
final class PartArchitectureTest {
    @ArchTest
    static final ArchTests HOUSE = ArchTests.in(HouseRules.class);

    @ArchTest
    static final ArchTests KERNEL = ArchTests.in(KernelRules.class);

    @ArchTest
    static final ArchRule USES = HouseRules.usesOnly(
            "chargehand.part",
            "chargehand.measure..",
            "chargehand.trade..",
            "java.io",
            "java.nio.charset",
            "java.time",
            "org.snakeyaml.engine..",
            "org.apache.commons.numbers..");
}
