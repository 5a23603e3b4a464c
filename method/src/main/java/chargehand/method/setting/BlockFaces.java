package chargehand.method.setting;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.SpindleSpeed;
import chargehand.measure.WorkTime;
import chargehand.method.kit.Mill;
import chargehand.method.kit.MillCutter;
import chargehand.method.kit.Vice;
import chargehand.method.plan.Blank;
import chargehand.method.plan.Cut;
import chargehand.method.plan.Holding;
import chargehand.method.plan.Holding.Face;
import chargehand.method.plan.SetUp;
import chargehand.method.plan.Settings;
import chargehand.part.Size;
import chargehand.trade.sum.Step;
import chargehand.trade.sum.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Writes the set-ups that bring a block's faces to size in the vice of one mill: each pair of faces in two holdings. */
public final class BlockFaces {
    private static final double SETTING_MINUTES = 10;
    private static final double STOP_MINUTES = 3;
    private static final double LOADING_MINUTES = 1;
    private static final Length DEEPEST = Length.mm(2);
    private static final Length LEAST_ABOVE_JAWS = Length.mm(3);
    private static final double FEED_PER_TOOTH_MM = 0.08;
    private static final Length LEAST_CUTTER = Length.mm(12);

    private final BlockMaking making;
    private final Mill mill;
    private final BlockRest rest;

    public BlockFaces(BlockMaking making, Mill mill, BlockRest rest) {
        this.making = making;
        this.mill = mill;
        this.rest = rest;
    }

    /** A pair of opposite faces, named by the one cut last. */
    public enum Pair {
        THICKNESS(Face.TOP, Face.FAR),
        WIDTH(Face.NEAR, Face.BOTTOM),
        /** Cut with the end standing out beside the vice, so that long work lies flat. */
        LENGTH(Face.LEFT, Face.FAR);

        private final Face last;
        private final Face fixed;

        Pair(Face last, Face fixed) {
            this.last = last;
            this.fixed = fixed;
        }

        private Face down(Face cut) {
            return this == LENGTH ? Face.BOTTOM : cut.opposite();
        }
    }

    /** The size of the block over a pair of faces. */
    public Size size(Pair pair) {
        return switch (pair) {
            case THICKNESS -> making.body().thickness();
            case WIDTH -> making.body().width();
            case LENGTH -> making.body().length();
        };
    }

    /** The size of the slab over a pair of faces. */
    public static Length raw(Blank.Slab slab, Pair pair) {
        return switch (pair) {
            case THICKNESS -> slab.thickness();
            case WIDTH -> slab.width();
            case LENGTH -> slab.length();
        };
    }

    /** The two set-ups for a pair, from the size over the faces as it is. */
    public List<SetUp> write(int number, Pair pair, Length raw) {
        Length size = size(pair).length();
        Length between = size.plus(raw.minus(size).half());
        Face first = pair.last.opposite();
        return List.of(
                setUp(new Facing(number, first, pair.fixed, pair.down(first), raw, between), pair, false),
                setUp(new Facing(number + 1, pair.last, pair.fixed, pair.down(pair.last), between, size), pair, true));
    }

    private record Facing(int number, Face face, Face fixed, Face down, Length from, Length to) {}

    private SetUp setUp(Facing facing, Pair pair, boolean last) {
        Draft draft = operation(facing, pair, last);
        var operations = new ArrayList<>(List.of(draft.write(1), deburr().write(2)));
        Length height =
                Length.most(LEAST_ABOVE_JAWS, facing.from().minus(facing.to()).plus(LEAST_ABOVE_JAWS));
        double setting = last ? STOP_MINUTES : SETTING_MINUTES;
        return new SetUp(
                facing.number(),
                mill.name(),
                holding(facing, height),
                instructions(facing, pair, height),
                operations,
                WorkTime.minutes(setting),
                WorkTime.minutes(LOADING_MINUTES),
                rest instanceof BlockRest.OnTable ? List.of() : working(height));
    }

    private Holding holding(Facing facing, Length height) {
        return switch (rest) {
            case BlockRest.InVice(Vice vice) -> new Holding.InVice(vice.name(), facing.fixed(), facing.down(), height);
            case BlockRest.OnTable table -> new Holding.OnTable(Face.BOTTOM, List.of(facing.face()));
        };
    }

    private List<String> instructions(Facing facing, Pair pair, Length height) {
        return switch (rest) {
            case BlockRest.InVice(Vice vice) -> inVice(vice, facing, pair, height);
            case BlockRest.OnTable table -> onTable(facing);
        };
    }

    private static List<String> onTable(Facing facing) {
        String edge = facing.face().name().toLowerCase(Locale.ROOT);
        return List.of(
                "Bottom down on clean parallels on the table, the " + edge
                        + " edge standing out over a slot by more than the cutter is wide.",
                "Clamp at two places or more, each stud close to the work, the heel of each clamp a little high.",
                "Clock a finished edge along the table before the last nip; the first edge is set by square.");
    }

    private List<String> inVice(Vice vice, Facing facing, Pair pair, Length height) {
        String face = facing.fixed().name().toLowerCase(Locale.ROOT);
        String down = facing.down().name().toLowerCase(Locale.ROOT);
        return List.of(
                "Hold in the " + vice.name() + ", " + face + " side against the fixed jaw, " + down
                        + " down on parallels, " + standing(facing, pair, height) + ".",
                "Tap down on the parallels; none may slide.");
    }

    private String standing(Facing facing, Pair pair, Length height) {
        return pair == Pair.LENGTH
                ? facing.face().name().toLowerCase(Locale.ROOT)
                        + " end standing out of the jaws by no more than it must"
                : "at least " + LengthText.in(height, mill.unit()) + " above the jaws";
    }

    private List<Step> working(Length height) {
        var working = new Working();
        working.fact(
                "Height above the jaws: what comes off, and clear of the cutter",
                LengthText.both(height, mill.unit()),
                CutKind.SOURCE);
        return working.steps();
    }

    private Draft operation(Facing facing, Pair pair, boolean last) {
        MillCutter cutter = cutter(pair);
        String name = facing.face().name().toLowerCase(Locale.ROOT);
        String say = last
                ? "Mill the " + name + " face to " + size(pair).nominal().text()
                : "Mill the " + name + " face, take off "
                        + LengthText.in(facing.from().minus(facing.to()), mill.unit());
        var draft = new Draft(say, new Cut.MillFace(facing.face(), facing.to()), cutter.name(), mill.unit());
        SpindleSpeed speed =
                Spindle.pick(mill.speeds(), cutter.diameter(), CutKind.MILLING, making.material(), draft.working());
        draft.speed(speed);
        draft.coolant(Coolant.forCut(making.material()));
        Length wanted = Length.mm(FEED_PER_TOOTH_MM * cutter.teeth() * speed.rpm());
        Length feed = mill.feeds().notAbove(wanted).orElse(wanted);
        draft.feed(new Settings.Feed.PerMinute(feed));
        List<Settings.Pass> passes = passes(facing);
        draft.passes(passes);
        double strokes = strokes(across(pair), cutter.diameter());
        double stroke = along(pair).plus(cutter.diameter()).over(feed);
        draft.takes(passes.size() * (OperationTimes.PASS_MINUTES + strokes * stroke));
        if (last) {
            draft.reading(new Gauges(making.kit().tooling())
                    .outside(pair.name().toLowerCase(Locale.ROOT), making.limits(size(pair))));
        }
        draft.caution("Guard on; measure and brush off chips only with the cutter stopped.");
        return draft;
    }

    private List<Settings.Pass> passes(Facing facing) {
        Length off = facing.from().minus(facing.to());
        int cuts = (int) Math.max(1, Math.ceil(off.over(DEEPEST)));
        var passes = new ArrayList<Settings.Pass>();
        for (int i = 1; i <= cuts; i++) {
            Length dial = mill.dials().up().nearest(off.times((double) i / cuts));
            passes.add(new Settings.Pass(
                    i, dial, i == cuts ? facing.to() : facing.from().minus(dial)));
        }
        return passes;
    }

    /** One stroke where the cutter covers the face, else strokes that overlap by a quarter. */
    private static double strokes(Length across, Length cutter) {
        return cutter.isLessThan(across) ? Math.ceil(across.over(cutter.times(0.75))) : 1;
    }

    /** The stoutest end mill whose side covers an edge that stands out, if there is one; else as for a face. */
    private MillCutter cutter(Pair pair) {
        return making.kit().tooling().millCutters(MillCutter.EndMill.class).stream()
                .filter(cutter -> rest instanceof BlockRest.OnTable
                        && !cutter.reach().isLessThan(making.body().thickness().length()))
                .max(Comparator.comparing(MillCutter::diameter))
                .map(MillCutter.class::cast)
                .orElseGet(() -> faceCutter(pair));
    }

    /** The smallest stout cutter that covers the face; where none does, the widest there is. */
    private MillCutter faceCutter(Pair pair) {
        Length across = Length.most(LEAST_CUTTER, across(pair));
        return making.kit().tooling().millCutters().stream()
                .filter(cutter ->
                        !(cutter instanceof MillCutter.SlittingSaw || cutter instanceof MillCutter.GearCutter))
                .min(Comparator.comparing(
                                (MillCutter cutter) -> cutter.diameter().isLessThan(across))
                        .thenComparing(cutter -> cutter.diameter().isLessThan(across)
                                ? cutter.diameter().negated()
                                : cutter.diameter()))
                .orElseThrow();
    }

    private Length across(Pair pair) {
        return switch (pair) {
            case THICKNESS -> making.body().width().length();
            case WIDTH, LENGTH -> making.body().thickness().length();
        };
    }

    private Length along(Pair pair) {
        return switch (pair) {
            case THICKNESS, WIDTH -> making.body().length().length();
            case LENGTH -> making.body().width().length();
        };
    }

    private Draft deburr() {
        String tool = making.kit().tooling().deburring().stream().findFirst().orElse("smooth file");
        return new Draft("Take off all burrs", new Cut.Deburr(), tool, mill.unit())
                .takes(OperationTimes.HAND_FEED_MINUTES);
    }
}
