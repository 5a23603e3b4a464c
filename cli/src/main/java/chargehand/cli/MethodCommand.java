package chargehand.cli;

import chargehand.book.json.RecordJson;
import chargehand.measure.WorkTimeText;
import chargehand.method.kit.Kit;
import chargehand.method.plan.Bound;
import chargehand.method.plan.Method;
import chargehand.method.plan.Planned;
import chargehand.method.plan.SetUp;
import chargehand.method.proved.ProvedPlanner;
import chargehand.method.rack.Rack;
import chargehand.method.replay.Fault;
import chargehand.method.replay.Proof;
import chargehand.method.wish.Names;
import chargehand.method.wish.WishText;
import chargehand.method.wish.Wishes;
import chargehand.paper.sheet.HeldIn;
import chargehand.paper.sheet.Sheets;
import chargehand.part.Part;
import chargehand.part.yaml.PartReading;
import java.io.IOException;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Plans how a part is made with a kit and a rack, and proves it by replay. */
final class MethodCommand implements Command {
    private static final Option KIT =
            Option.valued("--kit", "FOLDER", "The folder that describes the machines; demo/kit when left out.");
    private static final Option RACK =
            Option.valued("--rack", "FILE", "The file that lists the stock; demo/rack.yaml when left out.");
    private static final Option COUNT = Option.valued("--count", "N", "How many are to be made; one when left out.");
    private static final Option WITH = Option.repeated(
            "--with", "WHAT", "Keep to this: 'stock C2', 'grip on HEAD', 'NECK before HEAD'. May be given again.");
    private static final Option WITHOUT = Option.repeated(
            "--without",
            "WHAT",
            "Do without this: 'small lathe', 'centres of large lathe', 'parting off', 'stock C2', 'grip on HEAD'.");
    private static final Option PDF = Option.valued("--pdf", "FILE", "Write the method sheet as PDF.");
    private static final Option JSON =
            Option.flag("--json", "Print the whole method, or the reasons why there is none, as JSON.");
    private static final int MOST_COUNT = 10_000;

    private final Terminal terminal;

    MethodCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Usage usage() {
        return new Usage(
                "method",
                "FILE",
                List.of(
                        "Plan how a part is made here, and prove it by replay.",
                        "",
                        "  ./chargehand method demo/parts/union.yaml --kit demo/kit --rack demo/rack.yaml --count 2",
                        "",
                        "Where there is no method, it says which requirement could not be met and what would unlock it."),
                List.of(KIT, RACK, COUNT, WITH, WITHOUT, PDF, JSON));
    }

    @Override
    public int run(Given given) throws IOException {
        Path file = Path.of(given.onlyWord("FILE"));
        int count = count(given);
        Part part = part(file);
        Kit kit = OnDisk.kit(Path.of(given.find(KIT.name()).orElse("demo/kit")));
        Rack rack = OnDisk.rack(Path.of(given.find(RACK.name()).orElse("demo/rack.yaml")));
        Wishes wishes = wishes(given, Names.of(kit, rack, part));
        return switch (new ProvedPlanner(kit, rack).plan(part, count, wishes)) {
            case ProvedPlanner.Outcome.Proved proved -> made(given, part, kit, proved);
            case ProvedPlanner.Outcome.NotHere(List<Planned.Reason> reasons) -> notHere(given, reasons);
        };
    }

    private static Wishes wishes(Given given, Names names) {
        List<String> texts = Stream.concat(
                        given.all(WITH.name()).stream().map(what -> "with " + what),
                        given.all(WITHOUT.name()).stream().map(what -> "without " + what))
                .toList();
        return switch (new WishText(names).readAll(texts)) {
            case WishText.All.Understood(Wishes wishes) -> wishes;
            case WishText.All.NotUnderstood(List<String> says) -> throw new AskedWrongly(String.join("\n", says));
        };
    }

    private static int count(Given given) {
        String text = given.find(COUNT.name()).orElse("1");
        if (!text.matches("[0-9]{1,5}") || Integer.parseInt(text) < 1 || Integer.parseInt(text) > MOST_COUNT) {
            throw new AskedWrongly("--count is a whole number from 1 to " + MOST_COUNT + ", not '" + text + "'.");
        }
        return Integer.parseInt(text);
    }

    private static Part part(Path file) throws IOException {
        return switch (OnDisk.part(file)) {
            case PartReading.Read read -> read.part();
            case PartReading.Faulty faulty -> throw new AskedWrongly(OnDisk.lines(file, faulty.faults()));
        };
    }

    private int made(Given given, Part part, Kit kit, ProvedPlanner.Outcome.Proved proved) throws IOException {
        Method method = proved.method();
        if (given.find(PDF.name()).isPresent()) {
            var printed = new Sheets.Proved(part, method, proved.proof());
            Written.pdf(
                    Path.of(given.find(PDF.name()).orElseThrow()), Sheets.method(printed, kit, "", Optional.empty()));
        }
        if (given.has(JSON.name())) {
            var tree = new LinkedHashMap<String, Object>();
            tree.put("method", RecordJson.of(Method.class).tree(method));
            tree.put("replay", replay(proved.proof()));
            tree.put("weighed", proved.weighed());
            tree.put("bound", RecordJson.of(Bound.class).tree(proved.bound()));
            terminal.out().append(JsonLines.write(tree)).append('\n');
        } else {
            say(method, proved.proof());
            terminal.out().println(proved.bound().says());
        }
        return Ended.ANSWERED;
    }

    private static Map<String, Object> replay(Proof proof) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("made", proof.made());
        tree.put("worst", Map.of("mm", proof.worst().mm(), "in", proof.worst().in()));
        tree.put("faults", proof.faults().stream().map(Fault::say).toList());
        return tree;
    }

    private void say(Method method, Proof proof) {
        terminal.out()
                .println(method.title() + ", issue " + method.issue() + ", " + method.count() + " off, from "
                        + method.stock().piece() + ": " + method.stock().says());
        for (SetUp setUp : method.setUps()) {
            terminal.out().println();
            terminal.out()
                    .println("Set-up " + setUp.number() + ", " + setUp.machine() + ", " + HeldIn.say(setUp.holding())
                            + ", " + WorkTimeText.of(setUp.time(method.count())));
            setUp.instructions().forEach(line -> terminal.out().println("   " + line));
            setUp.operations()
                    .forEach(operation -> terminal.out()
                            .println("  " + operation.number() + ". " + operation.say()
                                    + operation
                                            .settings()
                                            .speed()
                                            .map(rpm -> ", " + Math.round(rpm.rpm()) + " rpm")
                                            .orElse("")));
        }
        terminal.out().println();
        method.cautions().forEach(caution -> terminal.out().println("Take care: " + caution));
        terminal.out()
                .println(String.format(
                        Locale.ROOT,
                        "In all %s. Replayed: every surface within %.3f mm.",
                        WorkTimeText.of(method.time()),
                        proof.worst().mm()));
    }

    private int notHere(Given given, List<Planned.Reason> reasons) {
        if (given.has(JSON.name())) {
            var tree = new LinkedHashMap<String, Object>();
            tree.put("reasons", reasons.stream().map(MethodCommand::reason).toList());
            terminal.out().append(JsonLines.write(tree)).append('\n');
        } else {
            terminal.out().println("It cannot be made here as it stands.");
            for (Planned.Reason reason : reasons) {
                terminal.out().println(" - " + reason.say());
                terminal.out().println("   What would unlock it: " + reason.unlock());
            }
        }
        return Ended.ANSWERED;
    }

    private static Map<String, Object> reason(Planned.Reason reason) {
        var tree = new LinkedHashMap<String, Object>();
        tree.put("code", reason.code().name());
        tree.put("say", reason.say());
        tree.put("unlock", reason.unlock());
        return tree;
    }
}
