package chargehand.method.search;

import chargehand.measure.AngleText;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Limits;
import chargehand.method.kit.DividingHead;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.LatheTool;
import chargehand.method.kit.Mill;
import chargehand.method.kit.ScrewCutting;
import chargehand.method.kit.Tooling;
import chargehand.method.setting.ThreadWays;
import chargehand.method.task.Bores;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Section;
import chargehand.trade.thread.ScrewThread;
import java.math.BigInteger;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/** What would make possible what the shop cannot do, the cheapest first: each is tried before it is said. */
final class Unlock {
    private static final int FEWEST_TEETH = 20;
    private static final int MOST_TEETH = 127;
    private static final int FEWEST_HOLES = 15;
    private static final int MOST_HOLES = 66;
    private static final Length GROUND_FOR = Length.mm(0.1);
    private static final Length GROUND_UP_TO = Length.mm(12);

    private final Kit kit;

    Unlock(Kit kit) {
        this.kit = kit;
    }

    /** For an outside thread that neither a die nor any train cuts. */
    String thread(Section.Threaded section) {
        ScrewThread thread = section.thread();
        var ways = new ArrayList<String>();
        boolean toolOwned = new ThreadWays(kit.tooling()).screwCutter(thread).isPresent();
        Tooling tooling = toolOwned ? kit.tooling() : with(tool(thread));
        String ground = toolOwned
                ? ""
                : "a screw-cutting tool ground to "
                        + AngleText.degrees(thread.form().includedAngle(), 1);
        if (!toolOwned && canCut(kit.lathes().stream(), tooling, section)) {
            ways.add(ground);
        } else {
            wheel(tooling, section).ifPresent(wheel -> ways.add(ground.isEmpty() ? wheel : wheel + ", with " + ground));
        }
        if (takesDie(section)) {
            ways.add("a " + thread.designation() + " die, to be led from the tailstock");
        }
        return ways.isEmpty()
                ? "Send it out to be screwed, or change the thread to one that a die or the wheels here will cut."
                : "Borrow " + String.join("; or ", ways) + ".";
    }

    private boolean takesDie(Section.Threaded section) {
        var die = new Tooling.Die(section.thread().designation(), Tooling.DieKind.SPLIT);
        return new ThreadWays(withDie(die)).hasDie(section.thread(), section.length());
    }

    /** The one wheel, of those usually made, that brings a train near enough; the nearest to exact first. */
    private Optional<String> wheel(Tooling tooling, Section.Threaded section) {
        record Borrowed(Lathe lathe, int teeth, double error) {}
        return kit.lathes().stream()
                .flatMap(lathe -> IntStream.rangeClosed(FEWEST_TEETH, MOST_TEETH)
                        .filter(teeth -> !lathe.screwCutting().wheels().contains(teeth))
                        .boxed()
                        .flatMap(teeth -> new ThreadWays(tooling)
                                .train(with(lathe, teeth), section.thread(), section.length()).stream()
                                        .map(cut -> new Borrowed(
                                                lathe,
                                                teeth,
                                                cut.errorOver(section.length())
                                                        .abs()
                                                        .mm()))))
                .min(Comparator.comparingDouble(Borrowed::error).thenComparingInt(Borrowed::teeth))
                .map(found -> "a change wheel of " + found.teeth() + " teeth for the "
                        + found.lathe().name());
    }

    private static boolean canCut(Stream<Lathe> lathes, Tooling tooling, Section.Threaded section) {
        return lathes.anyMatch(lathe -> new ThreadWays(tooling)
                .train(lathe, section.thread(), section.length())
                .isPresent());
    }

    private static Lathe with(Lathe lathe, int teeth) {
        ScrewCutting old = lathe.screwCutting();
        var wheels = new ArrayList<>(old.wheels());
        wheels.add(teeth);
        var cutting =
                new ScrewCutting(old.leadscrew(), wheels, old.gearbox(), old.quadrant(), old.dial(), old.reverses());
        return new Lathe(
                lathe.name(),
                lathe.unit(),
                lathe.room(),
                lathe.speeds(),
                lathe.power(),
                lathe.feeds(),
                cutting,
                lathe.slides(),
                lathe.holders());
    }

    private static LatheTool tool(ScrewThread thread) {
        return new LatheTool.ScrewCutter(
                "ground for it",
                LatheTool.Edge.HIGH_SPEED_STEEL,
                thread.form().includedAngle(),
                LatheTool.Side.OUTSIDE,
                new Limits(GROUND_FOR, GROUND_UP_TO));
    }

    private Tooling with(LatheTool tool) {
        Tooling old = kit.tooling();
        var tools = new ArrayList<>(old.latheTools());
        tools.add(tool);
        return new Tooling(
                tools,
                old.holeTools(),
                old.dies(),
                old.tailstockDieHolder(),
                old.millCutters(),
                old.mandrels(),
                old.gauges(),
                old.deburring());
    }

    private Tooling withDie(Tooling.Die die) {
        Tooling old = kit.tooling();
        var dies = new ArrayList<>(old.dies());
        dies.add(die);
        return new Tooling(
                old.latheTools(),
                old.holeTools(),
                dies,
                old.tailstockDieHolder(),
                old.millCutters(),
                old.mandrels(),
                old.gauges(),
                old.deburring());
    }

    /** For flats that no plate divides. */
    String division(int sides) {
        String otherwise = "bar of that shape, or a file and a gauge";
        return kit.mills().stream()
                .map(Mill::dividingHead)
                .flatMap(Optional::stream)
                .map(head -> circle(head, sides))
                .flatMap(Optional::stream)
                .min(Comparator.<Integer>naturalOrder())
                .map(holes -> "Borrow an index plate with a circle of " + holes + " holes; or use " + otherwise + ".")
                .orElse("Use " + otherwise + "; or a dividing head that takes the work.");
    }

    /** The smallest circle usually drilled on which the division comes out even; empty where one is owned. */
    private static Optional<Integer> circle(DividingHead head, int sides) {
        int common =
                BigInteger.valueOf(head.worm()).gcd(BigInteger.valueOf(sides)).intValue();
        int step = sides / common;
        boolean owned = head.plates().stream()
                .flatMap(plate -> plate.circles().stream())
                .anyMatch(circle -> circle % step == 0);
        return owned
                ? Optional.empty()
                : IntStream.rangeClosed(FEWEST_HOLES, MOST_HOLES)
                        .filter(holes -> holes % step == 0)
                        .boxed()
                        .findFirst();
    }

    /** For a bore that no tool makes. */
    String bore(Bore bore) {
        String size = LengthText.both(Bores.diameter(bore), LengthUnit.MILLIMETRE);
        return switch (bore) {
            case Bore.Drilled drilled -> "Borrow a drill of " + size + ", or drill under it and bore it out.";
            case Bore.Bored bored ->
                "Borrow a boring bar that enters the hole drilled for " + size + " and reaches its bottom.";
            case Bore.Counterbored counterbored ->
                "Borrow a counterbore of " + size + ", or a bar that enters the hole before it and reaches its bottom.";
            case Bore.Reamed reamed ->
                "Borrow a reamer of " + size + ", or have the size changed to one that is owned.";
            case Bore.Tapped tapped -> "Borrow the taps for " + tapped.thread().designation() + ".";
            case Bore.Coned coned -> "Borrow a countersink of its angle, or a bar that enters its narrow end.";
        };
    }

    /** For work that no holding leaves clear, grips enough and holds stiff: too long or too large first. */
    String holding(Body.Turned body) {
        List<Lathe> lathes = kit.lathes();
        if (lathes.isEmpty()) {
            return "A lathe.";
        }
        Length bed = longest(lathes.stream().map(lathe -> lathe.room().betweenCentres()));
        Length swing = longest(lathes.stream().map(lathe -> lathe.room().overSlide()));
        if (body.length().isMoreThan(bed)) {
            return "A longer bed: " + mm(body.length()) + " between centres, where the longest here takes " + mm(bed)
                    + "; or send it out to be turned.";
        }
        if (body.largestDiameter().isMoreThan(swing)) {
            return "A larger lathe: it swings " + mm(body.largestDiameter())
                    + ", and over the largest slide here there is room" + " for " + mm(swing)
                    + "; or send it out to be turned.";
        }
        return "A steady, a longer blank with a stub to hold by, or a larger lathe.";
    }

    private static Length longest(Stream<Length> lengths) {
        return lengths.max(Comparator.naturalOrder()).orElse(Length.ZERO);
    }

    private static String mm(Length length) {
        return LengthText.in(length, LengthUnit.MILLIMETRE);
    }
}
