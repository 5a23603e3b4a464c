package chargehand.cli;

import chargehand.drawing.picture.Picture;
import chargehand.method.estimate.Estimator;
import chargehand.method.kit.Kit;
import chargehand.method.plan.Planned;
import chargehand.method.proved.Aid;
import chargehand.method.proved.ProvedPlanner;
import chargehand.method.rack.Rack;
import chargehand.method.stock.CuttingUp;
import chargehand.method.stock.WeekStock;
import chargehand.method.wish.Names;
import chargehand.method.wish.WishText;
import chargehand.method.wish.Wishes;
import chargehand.paper.sheet.Sheets;
import chargehand.part.Part;
import chargehand.part.yaml.PartReading;
import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
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
    private static final Option WHY_NOT = Option.flag(
            "--why-not", "Say of every set-up why it is not held otherwise, and what that would cost in time.");
    private static final Option OTHERS = Option.valued(
            "--others", "N", "Look for so many other ways too, with other stock, machines or holders; up to 8.");
    private static final Option PDF = Option.valued("--pdf", "FILE", "Write the method sheet as PDF.");
    private static final Option JSON =
            Option.flag("--json", "Print the whole method, or the reasons why there is none, as JSON.");
    private static final int MOST_COUNT = 10_000;
    private static final int MOST_OTHERS = 8;

    private final Terminal terminal;

    MethodCommand(Terminal terminal) {
        this.terminal = terminal;
    }

    @Override
    public Usage usage() {
        return new Usage(
                "method",
                "FILE …",
                List.of(
                        "Plan how a part is made here, and prove it by replay.",
                        "",
                        "  ./chargehand method demo/parts/union.yaml --kit demo/kit --rack demo/rack.yaml --count 2",
                        "",
                        "Of several FILEs, each with =N for how many, it gives the cutting list of them all together instead:",
                        "",
                        "  ./chargehand method demo/parts/union.yaml=2 demo/parts/gland-stud.yaml=24",
                        "",
                        "Where there is no method, it says which requirement could not be met and what would unlock it."),
                List.of(KIT, RACK, COUNT, WITH, WITHOUT, WHY_NOT, OTHERS, PDF, JSON));
    }

    @Override
    public int run(Given given) throws IOException {
        if (given.words().size() > 1) {
            return week(given);
        }
        Path file = Path.of(given.onlyWord("FILE"));
        int count = whole(given, COUNT, 1, MOST_COUNT);
        Part part = part(file);
        Kit kit = OnDisk.kit(Path.of(given.find(KIT.name()).orElse("demo/kit")));
        Rack rack = OnDisk.rack(Path.of(given.find(RACK.name()).orElse("demo/rack.yaml")));
        Wishes wishes = wishes(given, Names.of(kit, rack, part));
        var planner = new ProvedPlanner(kit, rack);
        return switch (planner.plan(part, count, wishes)) {
            case ProvedPlanner.Outcome.Proved proved -> {
                int others = whole(given, OTHERS, 0, MOST_OTHERS);
                if (given.find(PDF.name()).isPresent()) {
                    var printed = new Sheets.Proved(part, proved.method(), proved.proof());
                    Path to = Path.of(given.find(PDF.name()).orElseThrow());
                    Written.pdf(to, pages(printed, kit, planner.aids(proved.method())));
                }
                yield say(
                        given,
                        new MethodAnswer(
                                wishes,
                                proved,
                                given.has(WHY_NOT.name()) ? planner.whyNot(part, count, wishes) : List.of(),
                                others == 0 ? List.of() : planner.others(part, count, wishes, others),
                                Estimator.of(proved.method(), kit, rack)));
            }
            case ProvedPlanner.Outcome.NotHere(List<Planned.Reason> reasons) -> notHere(given, reasons);
        };
    }

    private int week(Given given) throws IOException {
        int each = whole(given, COUNT, 1, MOST_COUNT);
        var wants = new ArrayList<WeekStock.Want>();
        for (String word : given.words()) {
            int equals = word.lastIndexOf('=');
            Path file = Path.of(equals < 0 ? word : word.substring(0, equals));
            int count = equals < 0 ? each : whole("what stands after =", word.substring(equals + 1), 1, MOST_COUNT);
            Part part = part(file);
            wants.add(new WeekStock.Want(part.title() + " (" + file.getFileName() + ")", part, count));
        }
        Kit kit = OnDisk.kit(Path.of(given.find(KIT.name()).orElse("demo/kit")));
        Rack rack = OnDisk.rack(Path.of(given.find(RACK.name()).orElse("demo/rack.yaml")));
        var said = new WeekSaid(WeekStock.list(wants, rack, CuttingUp.with(kit)));
        if (given.has(JSON.name())) {
            terminal.out().append(JsonLines.write(said.tree())).append('\n');
        } else {
            said.say(terminal.out());
        }
        return Ended.ANSWERED;
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

    /** A whole number from one to another; the smaller when left out. */
    private static int whole(Given given, Option option, int least, int most) {
        return whole(option.name(), given.find(option.name()).orElse(Integer.toString(least)), least, most);
    }

    private static int whole(String what, String text, int least, int most) {
        if (!text.matches("[0-9]{1,5}") || Integer.parseInt(text) < least || Integer.parseInt(text) > most) {
            throw new AskedWrongly(what + " is a whole number from " + least + " to " + most + ", not '" + text + "'.");
        }
        return Integer.parseInt(text);
    }

    private static Part part(Path file) throws IOException {
        return switch (OnDisk.part(file)) {
            case PartReading.Read read -> read.part();
            case PartReading.Faulty faulty -> throw new AskedWrongly(OnDisk.lines(file, faulty.faults()));
        };
    }

    private static List<Picture> pages(Sheets.Proved proved, Kit kit, List<Aid> aids) {
        var pages = new ArrayList<Picture>(Sheets.method(proved, kit, "", Optional.empty()));
        pages.addAll(Sheets.aids(aids, kit, ""));
        return pages;
    }

    private int say(Given given, MethodAnswer answer) {
        if (given.has(JSON.name())) {
            terminal.out().append(JsonLines.write(MethodTree.of(answer))).append('\n');
        } else {
            new MethodText(terminal.out()).say(answer);
        }
        return Ended.ANSWERED;
    }

    private int notHere(Given given, List<Planned.Reason> reasons) {
        if (given.has(JSON.name())) {
            terminal.out().append(JsonLines.write(MethodTree.of(reasons))).append('\n');
        } else {
            new MethodText(terminal.out()).say(reasons);
        }
        return Ended.ANSWERED;
    }
}
