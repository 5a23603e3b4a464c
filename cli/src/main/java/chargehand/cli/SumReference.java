package chargehand.cli;

import chargehand.trade.sum.Example;
import chargehand.trade.sum.Field;
import chargehand.trade.sum.Result;
import chargehand.trade.sum.Sum;
import java.util.List;
import java.util.stream.Collectors;

/** What one sum takes and gives, made from its declaration. */
final class SumReference {
    private final Sum sum;

    SumReference(Sum sum) {
        this.sum = sum;
    }

    String text() {
        var page = new TextPage();
        page.line(sum.name() + ": " + sum.purpose());
        page.heading("It asks for");
        page.rows(sum.fields().stream().map(SumReference::row).toList());
        page.heading("It answers");
        page.rows(sum.results().stream().map(SumReference::row).toList());
        page.heading("For example");
        sum.examples().forEach(example -> page.indented(command(example) + "   (" + example.about() + ")"));
        return page.text();
    }

    private static List<String> row(Field<?> field) {
        String needed = field.required()
                ? "needed"
                : field.fallback() == null ? "may be left out" : "taken as " + field.fallback() + " when left out";
        return List.of(field.name(), field.label() + " (" + field.kind().name() + "; " + needed + "): " + field.hint());
    }

    private static List<String> row(Result result) {
        return List.of(result.name(), result.label() + (result.always() ? "" : " (where there is one)"));
    }

    private String command(Example example) {
        return "./chargehand sum " + sum.name() + " "
                + sum.fields().stream()
                        .map(Field::name)
                        .filter(example.ask()::containsKey)
                        .map(name -> quoted(name + "=" + example.ask().get(name)))
                        .collect(Collectors.joining(" "));
    }

    private static String quoted(String word) {
        return word.matches("[A-Za-z0-9=.,/+-]+") ? word : "'" + word.replace("'", "'\\''") + "'";
    }
}
