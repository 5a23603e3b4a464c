package chargehand.method.stock;

import static org.assertj.core.api.Assertions.assertThat;

import chargehand.measure.Length;
import chargehand.method.kit.yaml.DemoKit;
import chargehand.method.rack.Rack;
import chargehand.method.rack.yaml.RackFile;
import chargehand.method.rack.yaml.RackRead;
import chargehand.part.Part;
import chargehand.part.yaml.PartFile;
import chargehand.part.yaml.PartReading;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

/** Stock for several jobs together. */
final class WeekStockTest {
    private static final CuttingUp CUTTING = CuttingUp.with(DemoKit.kit());

    private static Part part(String name) {
        return ((PartReading.Read) PartFile.read(DemoKit.part(name))).part();
    }

    private static Part pin(int diameter, int length) {
        return ((PartReading.Read) PartFile.read(String.format(Locale.ROOT, """
                part: Pin
                material: EN3
                unit: mm
                general: ISO 2768-m
                outside:
                  - {round: %d, length: %d}
                """, diameter, length))).part();
    }

    private static Rack rack(String... pieces) {
        var yaml = new StringBuilder("rack: some\nunit: mm\npieces:\n");
        for (String piece : pieces) {
            yaml.append("  - {place: rack, material: mild steel EN3, sure: marked, condition: bright, price: 2, ")
                    .append(piece)
                    .append("}\n");
        }
        return ((RackRead.Sound) RackFile.read(yaml.toString())).rack();
    }

    @Test
    void list_twoJobsThatBothWantTheShortBar_theOneThatGoesNowhereElseGetsIt() {
        Rack rack = rack("name: THIN, round: 20, length: 400", "name: THICK, round: 30, length: 2000");
        var thin = new WeekStock.Want("thin", pin(18, 250), 1);
        var other = new WeekStock.Want("other", pin(18, 240), 1);
        WeekList list = WeekStock.list(List.of(thin, other), rack, CUTTING);
        assertThat(list.unmet()).isEmpty();
        assertThat(list.proved()).isTrue();
        assertThat(list.bars()).extracting(bar -> bar.piece().name()).containsExactlyInAnyOrder("THIN", "THICK");
        assertThat(list.bars())
                .filteredOn(bar -> bar.piece().name().equals("THIN"))
                .flatExtracting(WeekList.Bar::cuts)
                .extracting(WeekList.Cut::name)
                .as("the longer pin wastes more in the thick bar")
                .containsExactly("thin");
    }

    @Test
    void list_noMoreThanTheRackHolds_saysWhoGoesWithout() {
        Rack rack = rack("name: ONLY, round: 20, length: 400");
        WeekList list = WeekStock.list(
                List.of(
                        new WeekStock.Want("first", pin(18, 250), 1),
                        new WeekStock.Want("second", pin(18, 240), 1),
                        new WeekStock.Want("bronze", part("bearing-bush"), 1)),
                rack,
                CUTTING);
        assertThat(list.unmet()).extracting(WeekList.Unmet::name).containsExactlyInAnyOrder("second", "bronze");
        assertThat(list.bars())
                .singleElement()
                .satisfies(bar -> assertThat(bar.cuts())
                        .singleElement()
                        .satisfies(cut -> assertThat(cut.name()).isEqualTo("first")));
    }

    @Test
    void list_wholeDemo_everyPieceOnceAndNoBarOverfilled() {
        var wants = new ArrayList<WeekStock.Want>();
        List.of("union", "gland-stud", "bearing-bush", "ram", "roller-pin", "shim", "metric-stud", "sluice-spindle")
                .forEach(name -> wants.add(new WeekStock.Want(name, part(name), name.equals("shim") ? 40 : 4)));
        WeekList list = WeekStock.list(wants, DemoKit.soundRack(), CUTTING);
        for (WeekStock.Want want : wants) {
            int pieces = list.bars().stream()
                    .flatMap(bar -> bar.cuts().stream())
                    .filter(cut -> cut.name().equals(want.name()))
                    .mapToInt(WeekList.Cut::pieces)
                    .sum();
            boolean unmet = list.unmet().stream().anyMatch(each -> each.name().equals(want.name()));
            assertThat(pieces).as(want.name()).isEqualTo(unmet ? 0 : want.count());
        }
        assertThat(list.bars()).hasSizeGreaterThan(3).allSatisfy(bar -> {
            Length taken = bar.cuts().stream()
                    .map(cut -> cut.each().times(cut.pieces()))
                    .reduce(Length.ZERO, Length::plus);
            assertThat(bar.left().isNegative()).isFalse();
            assertThat(taken.plus(bar.left())).isEqualTo(bar.piece().length().length());
        });
    }
}
