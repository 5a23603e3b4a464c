package chargehand.trade.material;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import chargehand.measure.Length;
import chargehand.measure.Pressure;
import chargehand.measure.Unreadable;
import chargehand.trade.PublishedRow;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

class MaterialsTest {
    static List<PublishedRow> strengths() {
        return PublishedRow.of("materials.json", "material");
    }

    static List<PublishedRow> densities() {
        return PublishedRow.of("materials.json", "density");
    }

    static List<PublishedRow> expansions() {
        return PublishedRow.of("materials.json", "expansion_e6_per_K");
    }

    static List<PublishedRow> steam() {
        return PublishedRow.of("materials.json", "steam_water_suitability");
    }

    static List<PublishedRow> groups() {
        return PublishedRow.of("cutting.json", "kienzle");
    }

    /** The table holds the least figure of the weakest usual condition: never above any published least for the name. */
    @ParameterizedTest
    @MethodSource("strengths")
    void strength_ofNamedMaterial_isNotAboveThePublishedLeast(PublishedRow row) {
        Strength strength = Materials.get(row.text("material").replaceAll(" (cold|hot|bar|sand|GZ|GS|M/).*", ""))
                .strength();

        String tensile = row.expects("Rm") ? "Rm" : "Rm_min";
        assertThat(strength.tensile().megapascals()).isBetween(0.6 * least(row, tensile), least(row, tensile));
        strength.yield().ifPresent(yield -> {
            String proof = row.expects("Re") ? "Re" : "Rp02";
            assertThat(yield.megapascals()).isBetween(0.6 * least(row, proof), least(row, proof));
        });
    }

    private static double least(PublishedRow row, String figure) {
        Object value = row.wanted(figure);
        Object first = value instanceof List<?> range ? range.getFirst() : value;
        return ((Number) first).doubleValue();
    }

    @ParameterizedTest
    @MethodSource("densities")
    void density_ofMaterial_isWithinOnePerCent(PublishedRow row) {
        String name = row.text("material").replace("carbon steel", "mild steel");
        assertThat(Materials.get(name).physical().kilogramsPerCubicMetre())
                .isCloseTo(row.want("rho"), within(0.01 * row.want("rho")));
    }

    @ParameterizedTest
    @MethodSource("expansions")
    void expansion_ofMaterial_isWithinFivePerCent(PublishedRow row) {
        String name = row.text("material").replaceAll("/.*", "").replace("carbon steel", "mild steel");
        assertThat(Materials.get(name).physical().expansionPerKelvin() * 1e6)
                .isCloseTo(row.want("alpha"), within(0.05 * row.want("alpha")));
    }

    @ParameterizedTest
    @MethodSource("steam")
    void steam_ofCopperAlloys_followsTheTradesGuidance(PublishedRow row) {
        String name = row.text("alloy").replaceAll("[ /(].*", "");
        SteamFitness wanted = row.wanted("suitable").equals(true) ? SteamFitness.YES : SteamFitness.NO;
        assertThat(Materials.find(name)).map(Material::steam).contains(wanted);
    }

    @ParameterizedTest
    @MethodSource("groups")
    void kienzle_ofEveryMaterialInAGroup_isThePublishedOne(PublishedRow row) {
        String group = "VDI 3323 group " + row.text("vdi_group");
        for (Material material : Materials.list()) {
            material.kienzle().filter(law -> law.source().text().equals(group)).ifPresent(law -> {
                assertThat(law.kc11().megapascals()).isEqualTo(row.want("kc11"));
                assertThat(law.mc()).isEqualTo(row.want("mc"));
            });
        }
    }

    @Test
    void kienzle_chipOfOneMillimetre_takesKc11() {
        Kienzle law = Materials.get("EN8").kienzle().orElseThrow();
        assertThat(law.specificForce(Length.mm(1))).isEqualTo(Pressure.megapascals(1500));
        assertThat(law.specificForce(Length.mm(0.2)).megapascals()).isCloseTo(2137.296, within(0.001));
    }

    @ParameterizedTest
    @CsvSource({
        "EN 8, EN8",
        "en8, EN8",
        "080M40, EN8",
        "BS970 080M40, EN8",
        "EN8 (080M40), EN8",
        "Stainless 316L, 316",
        "316 stainless steel, 316",
        "1.4401, 316",
        "stainless, 304",
        "phosphor bronze PB1, PB1",
        "Phos-bronze, PB1",
        "PB102 phosphor bronze, PB102",
        "gun metal, LG2",
        "leaded gunmetal (LG2), LG2",
        "85/5/5/5, LG2",
        "cast-iron, GJL250",
        "silver-steel, silver steel",
        "bright mild steel, EN3B",
        "mild steel bar, EN3B",
        "6082 T6, 6082",
        "6082-T6 aluminium, 6082",
        "free cutting brass, CZ121",
        "brass CZ112, CZ112",
        "EN24T, EN24T",
        "aluminum, 6082",
        "431 stainless, 431",
    })
    void find_asPeopleWriteIt_isTheirMaterial(String written, String grade) {
        assertThat(Materials.find(written)).map(Material::grade).contains(grade);
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "   ", "unobtainium", "EN8 and LG2", "?!", "lead"})
    void find_unknownOrDoubtful_isEmpty(String written) {
        assertThat(Materials.find(written)).isEmpty();
    }

    @Test
    void get_nearMiss_isRefusedWithTheCloseOnes() {
        assertThatThrownBy(() -> Materials.get("gunmetel"))
                .isInstanceOf(Unreadable.class)
                .hasMessageContaining("Did you mean LG2 leaded gunmetal");
        assertThatThrownBy(() -> Materials.get("cheese")).hasMessageContaining("Write a grade such as EN8");
    }

    @Test
    void list_everyMaterial_isFoundByEachOfItsNames() {
        for (Material material : Materials.list()) {
            assertThat(Materials.find(material.name())).contains(material);
            for (String alias : material.aliases()) {
                assertThat(Materials.find(alias.toLowerCase(Locale.ROOT))).contains(material);
            }
        }
    }

    @Test
    void list_everyMaterial_hasSensibleFigures() {
        for (Material material : Materials.list()) {
            Strength strength = material.strength();
            strength.yield().ifPresent(yield -> assertThat(yield).isLessThan(strength.tensile()));
            assertThat(material.carbide().low())
                    .as(material.name())
                    .isGreaterThan(material.hss().low());
            assertThat(material.physical().poissonRatio()).isBetween(0.2, 0.5);
        }
    }
}
