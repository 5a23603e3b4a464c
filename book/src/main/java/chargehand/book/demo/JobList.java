package chargehand.book.demo;

import chargehand.book.job.RequestAsWritten;
import chargehand.book.shop.ShopAsWritten;
import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import chargehand.part.yaml.tree.Fault;
import chargehand.part.yaml.tree.Faults;
import chargehand.part.yaml.tree.Form;
import chargehand.part.yaml.tree.YamlTree;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads a list of jobs. */
final class JobList {
    private static final Pattern AGO = Pattern.compile("(\\d{1,3}) days? ago");
    private static final Pattern AHEAD = Pattern.compile("in (\\d{1,3}) days?");
    private static final Map<String, String> KEYS = Map.of(
            "asset", RequestAsWritten.ASSET,
            "wants", RequestAsWritten.WANTS,
            "asker", RequestAsWritten.ASKER);

    private JobList() {}

    /** What came of reading a list. */
    sealed interface Reading {
        record Read(ShopAsWritten shop, List<ListedJob> jobs) implements Reading {}

        record Faulty(List<Fault> faults) implements Reading {}
    }

    static Reading read(String text) {
        var faults = new Faults();
        Optional<Reading> read = YamlTree.read(text, faults)
                .flatMap(twig -> Form.open(twig, "a list of jobs", faults, LengthUnit.MILLIMETRE))
                .flatMap(JobList::list);
        return faults.isEmpty() ? read.orElseThrow() : new Reading.Faulty(faults.list());
    }

    private static Optional<Reading> list(Form form) {
        ShopAsWritten shop = new ShopAsWritten(Map.of(
                ShopAsWritten.NAME, form.text("shop"),
                ShopAsWritten.UNIT, form.text("unit"),
                ShopAsWritten.FIRST_JOB, form.text("first-job")));
        List<ListedJob> jobs = form.rows("jobs", (job, number) -> job(job));
        return form.build(() -> new Reading.Read(shop, jobs));
    }

    private static Optional<ListedJob> job(Form form) {
        var fields = new HashMap<String, String>();
        KEYS.forEach((key, field) -> fields.put(field, form.text(key)));
        form.findText("count").ifPresent(count -> fields.put(RequestAsWritten.COUNT, count));
        int asked = form.value("asked", text -> days(text, AGO, "9 days ago"), 0);
        Optional<Integer> wanted = form.find("wanted", text -> days(text, AHEAD, "in 12 days"));
        Optional<String> part = form.findText("part");
        Optional<String> waitsFor = form.findText("waits-for");
        return form.build(
                () -> new ListedJob(form.place().line(), new RequestAsWritten(fields), asked, wanted, part, waitsFor));
    }

    private static int days(String text, Pattern pattern, String example) {
        Matcher matcher = pattern.matcher(text);
        if (!matcher.matches()) {
            throw new Unreadable("A day is counted from the day the list is read: write " + example + ".");
        }
        return Integer.parseInt(matcher.group(1));
    }
}
