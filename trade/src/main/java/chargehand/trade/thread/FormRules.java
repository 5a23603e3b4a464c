package chargehand.trade.thread;

import chargehand.trade.table.Row;
import chargehand.trade.table.Table;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;

/** The proportions of one thread form, as its standard prints them. */
record FormRules(
        double angleDegrees,
        Proportion depth,
        double depthRoundedToMm,
        Proportion effective,
        Proportion minor,
        Proportion minorInternal,
        Proportion majorInternal,
        Proportion engagement,
        Optional<Proportion> crestRadius,
        Optional<Proportion> rootRadius,
        Optional<Proportion> crestFlat,
        Optional<Proportion> rootFlat,
        String source) {

    static FormRules of(ThreadForm form) {
        return Objects.requireNonNull(ByForm.RULES.get(form), () -> "no rules for " + form);
    }

    private static FormRules of(Row row) {
        return new FormRules(
                row.number("angle"),
                Proportion.parse(row.text("depth")),
                row.findNumber("depth_rounded_to_mm").orElse(0.0),
                Proportion.parse(row.text("effective")),
                Proportion.parse(row.text("minor")),
                Proportion.parse(row.text("minor_internal")),
                Proportion.parse(row.text("major_internal")),
                Proportion.parse(row.text("engagement")),
                given(row, "crest_radius"),
                given(row, "root_radius"),
                given(row, "crest_flat"),
                given(row, "root_flat"),
                row.text("source"));
    }

    private static Optional<Proportion> given(Row row, String column) {
        return Optional.of(row.text(column)).filter(text -> !text.isEmpty()).map(Proportion::parse);
    }

    private static final class ByForm {
        private static final Map<ThreadForm, FormRules> RULES = read();

        private static Map<ThreadForm, FormRules> read() {
            var rules = new EnumMap<ThreadForm, FormRules>(ThreadForm.class);
            for (Row row : Table.read(FormRules.class, "forms.csv").rows()) {
                rules.put(ThreadForm.valueOf(row.text("form")), of(row));
            }
            return rules;
        }
    }
}
