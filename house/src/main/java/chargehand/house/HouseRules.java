package chargehand.house;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.junit.ArchTest;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ArchRule;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.stream.Stream;
import org.jspecify.annotations.NullMarked;

/** What holds for the classes of every module. A module's architecture test takes it in with {@code ArchTests.in}. */
public final class HouseRules {
    @ArchTest
    static final ArchRule PACKAGES_FORM_NO_CIRCLE =
            slices().matching("chargehand.(**)").should().beFreeOfCycles();

    @ArchTest
    static final ArchRule PACKAGES_ARE_NULL_MARKED =
            classes().should(liveInANullMarkedPackage()).because("absence is an Optional or a case of its own");

    @ArchTest
    static final ArchRule NAMES_ARE_TRADE_NOUNS = noClasses()
            .should()
            .haveNameMatching(".*(Manager|Helper|Util|Utils|Impl|Processor)")
            .because("a reader finds a thing by what it is");

    @ArchTest
    static final ArchRule LOGGING_IS_SLF4J = noClasses()
            .should()
            .dependOnClassesThat()
            .resideInAnyPackage("java.util.logging..", "org.apache.logging..", "org.apache.commons.logging..");

    private HouseRules() {}

    /**
     * A module's allow-list: everything in {@code module} may use itself, the plain JDK, JSpecify and what is named.
     *
     * @param module the module's root package, such as {@code chargehand.measure}
     * @param allowed package patterns in ArchUnit's notation
     */
    public static ArchRule usesOnly(String module, String... allowed) {
        String[] plain = {
            module + "..",
            "java.lang..",
            "java.math..",
            "java.text..",
            "java.util",
            "java.util.function..",
            "java.util.regex..",
            "java.util.stream..",
            "org.jspecify.annotations.."
        };
        return classes()
                .that()
                .resideInAPackage(module + "..")
                .should()
                .onlyDependOnClassesThat()
                .resideInAnyPackage(
                        Stream.of(plain, allowed).flatMap(Stream::of).toArray(String[]::new))
                .because("each module uses only what stands to its left, and few libraries");
    }

    private static ArchCondition<JavaClass> liveInANullMarkedPackage() {
        return new ArchCondition<>("live in a @NullMarked package") {
            @Override
            public void check(JavaClass type, ConditionEvents events) {
                var home = type.getPackage();
                boolean marked = home.tryGetPackageInfo()
                        .filter(info -> info.isAnnotatedWith(NullMarked.class))
                        .isPresent();
                events.add(new SimpleConditionEvent(type, marked, home.getName() + " has no @NullMarked package-info"));
            }
        };
    }
}
