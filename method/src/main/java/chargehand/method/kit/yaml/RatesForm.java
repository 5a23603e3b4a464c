package chargehand.method.kit.yaml;

import chargehand.measure.Notations;
import chargehand.measure.Unreadable;
import chargehand.method.kit.Rates;
import chargehand.part.yaml.tree.Form;
import java.util.Optional;

/** Reads what the shop asks for its hours. */
final class RatesForm {
    static final String KIND = "rates";
    private static final double MOST = 100_000;
    private static final double MOST_ADDED = 500;

    private RatesForm() {}

    static Optional<Rates> read(Form form) {
        form.text(KIND);
        String source = form.text("source");
        String money = form.text("money");
        double hour = form.value("hour", text -> amount(text, form), 1.0);
        var machines = form.rows("machines", (row, number) -> machine(row));
        double added =
                form.find("material-added", text -> hundredths(text, form)).orElse(0.0);
        return form.build(() -> new Rates(source, money, hour, machines, added / 100));
    }

    private static Optional<Rates.MachineHour> machine(Form row) {
        String machine = row.text("machine");
        double hour = row.value("hour", text -> amount(text, row), 1.0);
        return row.build(() -> new Rates.MachineHour(machine, hour));
    }

    private static double amount(String text, Form form) {
        double amount = Notations.NUMBER.read(text, form.bareUnit()).value();
        if (!(amount >= 0 && amount <= MOST)) {
            throw new Unreadable(KitText.quoted(text) + " is no rate: write what an hour costs, such as 45.");
        }
        return amount;
    }

    private static double hundredths(String text, Form form) {
        double added = Notations.NUMBER.read(text, form.bareUnit()).value();
        if (!(added >= 0 && added <= MOST_ADDED)) {
            throw new Unreadable(KitText.quoted(text) + " will not do here: it is so many in a hundred, such as 15.");
        }
        return added;
    }
}
