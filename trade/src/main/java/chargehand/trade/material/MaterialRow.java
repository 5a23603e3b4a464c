package chargehand.trade.material;

import chargehand.measure.Pressure;
import chargehand.measure.Speed;
import chargehand.trade.sum.Source;
import chargehand.trade.table.Row;
import java.util.Locale;
import java.util.Optional;

/** Reads one row of the table of materials. */
final class MaterialRow {
    private static final double GPA_TO_MPA = 1000;
    private static final double PER_MILLION = 1e-6;

    private final Row row;

    private MaterialRow(Row row) {
        this.row = row;
    }

    static Material read(Row row) {
        return new MaterialRow(row).material();
    }

    private Material material() {
        return new Material(
                row.text("name"),
                row.listed("aliases"),
                MaterialGroup.of(row.text("group")),
                new Strength(
                        Pressure.megapascals(row.number("rm")),
                        row.findNumber("re").map(Pressure::megapascals),
                        source("strength_source")),
                physical(),
                kienzle(),
                band("hss"),
                band("carbide"),
                SteamFitness.valueOf(row.text("steam").toUpperCase(Locale.ROOT)));
    }

    private Physical physical() {
        return new Physical(
                row.number("density"),
                Pressure.megapascals(row.number("e") * GPA_TO_MPA),
                row.number("poisson"),
                row.number("alpha") * PER_MILLION);
    }

    private Optional<Kienzle> kienzle() {
        return row.findNumber("kc11")
                .map(kc11 -> new Kienzle(Pressure.megapascals(kc11), row.number("mc"), source("kc_source")));
    }

    private SpeedBand band(String tool) {
        return new SpeedBand(
                Speed.metresPerMinute(row.number(tool + "_low")),
                Speed.metresPerMinute(row.number(tool + "_high")),
                source("speed_source"));
    }

    private Source source(String column) {
        return new Source(row.text(column));
    }
}
