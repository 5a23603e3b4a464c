package chargehand.method.search;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.method.kit.Kit;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.kit.yaml.KitFiles;
import chargehand.method.kit.yaml.KitRead;
import chargehand.method.plan.Planned;
import java.util.HashMap;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** What is said to make a thing possible does make it possible. */
class UnlockTest {
    private static final Pattern WHEEL = Pattern.compile("change wheel of (\\d+) teeth for the (\\w+ lathe)");

    /** The demo kit with the text of one file changed. */
    private static Kit kit(String file, UnaryOperator<String> change) {
        var files = new HashMap<>(DemoKit.files());
        files.computeIfPresent(file, (name, text) -> change.apply(text));
        return ((KitRead.Sound) KitFiles.read(files)).kit();
    }

    private static List<Planned.Reason> reasons(Kit kit, String yaml) {
        Planned planned = new Planner(kit, DemoKit.soundRack()).plan(DemoMethods.read(yaml), 1);
        return ((Planned.NotHere) planned).reasons();
    }

    /** A long metric thread: no die is led so far, and a lathe with an inch screw wants a wheel for it. */
    @Test
    void plan_threadThatWantsOneWheel_namesItAndWithItThereIsAMethod() {
        String part = """
                part: Long screw
                material: EN8
                unit: mm
                general: ISO 2768-m
                outside:
                  - thread: M18x1.5
                    length: 60
                    at-a: chamfer 1
                  - round: 24
                    length: 30
                """;
        UnaryOperator<String> inchScrewOnly =
                text -> text.replaceAll("wheels: \\[[^]]*]", "wheels: [20, 30, 40, 50, 60]")
                        .replaceAll("leadscrew: [^\\n]*", "leadscrew: 8 tpi")
                        .replaceAll("(?s)  gearbox:\\n(    - [^\\n]*\\n)+", "");
        var files = new HashMap<>(DemoKit.files());
        files.computeIfPresent("large-lathe.yaml", (name, text) -> inchScrewOnly.apply(text));
        files.computeIfPresent("small-lathe.yaml", (name, text) -> inchScrewOnly.apply(text));
        Kit poor = ((KitRead.Sound) KitFiles.read(files)).kit();
        List<Planned.Reason> reasons = reasons(poor, part);
        assertThat(reasons).singleElement().satisfies(reason -> {
            assertThat(reason.code()).isEqualTo(Planned.Code.NO_THREAD_WAY);
            assertThat(reason.unlock()).containsPattern(WHEEL);
        });
        Matcher wheel = WHEEL.matcher(reasons.getFirst().unlock());
        assertThat(wheel.find()).isTrue();
        String lathe = wheel.group(2).replace(' ', '-') + ".yaml";
        files.computeIfPresent(
                lathe, (name, text) -> text.replace("wheels: [20, 30,", "wheels: [20, " + wheel.group(1) + ", 30,"));
        Kit lent = ((KitRead.Sound) KitFiles.read(files)).kit();
        assertThat(new Planner(lent, DemoKit.soundRack()).plan(DemoMethods.read(part), 1))
                .isInstanceOf(Planned.Ready.class);
    }

    @Test
    void plan_boreWithoutItsReamer_namesTheReamer() {
        List<Planned.Reason> reasons = reasons(DemoKit.kit(), """
                part: Bush
                material: EN8
                unit: mm
                general: ISO 2768-m
                outside:
                  - round: 30
                    length: 20
                inside:
                  - ream: 17
                """);
        assertThat(reasons)
                .singleElement()
                .satisfies(reason -> assertThat(reason.unlock()).contains("reamer of 17 mm"));
    }

    /** 40 turns of the worm by 14 sides leaves sevenths: 21 holes is the smallest circle of a usual plate (arithmetic). */
    @Test
    void division_ofFourteen_wantsACircleOfSevens() {
        Kit kit = kit("mill.yaml", text -> text.replaceAll("circles: \\[[^]]*]", "circles: [16, 20]"));
        assertThat(new Unlock(kit).division(14)).contains("a circle of 21 holes");
    }
}
