package chargehand.part.testing;

import chargehand.measure.Angle;
import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.measure.Written;
import chargehand.part.Across;
import chargehand.part.Body;
import chargehand.part.Bore;
import chargehand.part.Bulge;
import chargehand.part.CentreHole;
import chargehand.part.Depth;
import chargehand.part.Edge;
import chargehand.part.End;
import chargehand.part.FlatDepth;
import chargehand.part.HoleCircle;
import chargehand.part.InBore;
import chargehand.part.Knurl;
import chargehand.part.Made;
import chargehand.part.OnEnd;
import chargehand.part.Section;
import chargehand.part.Size;
import chargehand.part.Stays;
import chargehand.part.Stretch;
import chargehand.part.Tolerance;
import chargehand.part.ToothSize;
import chargehand.part.shape.Solid;
import chargehand.trade.thread.ScrewThread;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Adds to a random turned part what is seen less often: teeth, knurls, flats, keyways in bores, holes on circles. */
final class FurtherShapes {
    private static final List<String> KNURLS = List.of("0.5 mm", "0.6 mm", "0.8 mm", "1 mm", "1.2 mm", "1.6 mm");

    private final Random random;
    private final Sizes sizes;

    FurtherShapes(Random random, Sizes sizes) {
        this.random = random;
        this.sizes = sizes;
    }

    Body.Turned added(Body.Turned body) {
        List<Section> outside = new ArrayList<>(body.outside());
        List<Across> across = new ArrayList<>(body.across());
        int place = random.nextInt(outside.size());
        if (outside.get(place) instanceof Section.Round round) {
            switch (random.nextInt(6)) {
                case 3 -> across.add(taperPin(round, body.start(place)));
                case 4 -> across.add(slit(body));
                case 0 -> outside.set(place, toothed(round));
                case 1 -> outside.set(place, knurled(round));
                case 2 -> across.add(flat(round, body.start(place)));
                default -> {}
            }
        }
        end(outside);
        boolean altered = random.nextInt(4) == 0;
        return new Body.Turned(
                altered ? altered(outside) : outside, body.inside(), across, inBores(body), onEnds(body));
    }

    /** Now and then a plain end is bevelled for welding or a ball is put on it. */
    private void end(List<Section> outside) {
        if (!(outside.getLast() instanceof Section.Round round)) {
            return;
        }
        Stretch old = round.stretch();
        double radius = round.diameter().length().half().mm();
        switch (random.nextInt(4)) {
            case 0 -> {
                Edge weld = new Edge.WeldPreparation(
                        random.nextBoolean() ? Edge.Joint.SINGLE_V : Edge.Joint.SINGLE_BEVEL,
                        sizes.near(radius * 0.2),
                        Angle.degrees(30),
                        random.nextBoolean() ? Optional.of(sizes.near(2)) : Optional.empty());
                outside.removeLast();
                outside.add(
                        new Section.Round(new Stretch(old.name(), old.length(), old.atA(), weld), round.diameter()));
            }
            case 1 -> {
                Size point = Size.general(sizes.written("0"));
                var stretch = new Stretch("ball", sizes.plain(radius), new Edge.Plain(), new Edge.Plain());
                outside.removeLast();
                outside.add(new Section.Round(
                        new Stretch(old.name(), old.length(), old.atA(), new Edge.Plain()), round.diameter()));
                outside.add(
                        new Section.Curved(stretch, round.diameter(), point, sizes.near(radius * 1.3), Bulge.CONVEX));
            }
            default -> {}
        }
    }

    private Section toothed(Section.Round round) {
        double mm = round.diameter().length().mm();
        int teeth = 12 + random.nextInt(30);
        double module = Math.max(0.25, Math.floor(mm / (teeth + 2) * 4) / 4);
        long perInch = Math.max(2, Math.round(Math.ceil((teeth + 2) * ToothSize.INCH / mm)));
        ToothSize size = random.nextBoolean()
                ? new ToothSize.Module(Double.toString(module), module)
                : new ToothSize.DiametralPitch(Long.toString(perInch), perInch);
        Angle pressure = Angle.degrees(random.nextBoolean() ? 20 : 14.5);
        return new Section.Toothed(round.stretch(), teeth, size, pressure, outside(teeth, size));
    }

    private static Size outside(int teeth, ToothSize size) {
        Length outside = Section.Toothed.fullOutside(teeth, size);
        LengthUnit unit = size instanceof ToothSize.Module ? LengthUnit.MILLIMETRE : LengthUnit.INCH;
        return new Size(new Written(LengthText.exact(outside, unit), outside, unit), new Tolerance.Bracketed());
    }

    private Section knurled(Section.Round round) {
        Knurl pattern = random.nextBoolean() ? Knurl.STRAIGHT : Knurl.DIAMOND;
        return new Section.Knurled(
                round.stretch(), round.diameter(), pattern, sizes.written(KNURLS.get(random.nextInt(KNURLS.size()))));
    }

    private Across flat(Section.Round round, Length start) {
        double diameter = round.diameter().length().mm();
        double length = round.length().mm();
        FlatDepth depth = random.nextBoolean()
                ? new FlatDepth.Below(sizes.plain(diameter * 0.1))
                : new FlatDepth.Leaving(sizes.plain(diameter * 0.9));
        return new Across.Flat(
                "a flat",
                depth,
                sizes.plain(start.mm() + length * 0.2),
                sizes.plain(length * 0.5),
                Angle.degrees(45 * random.nextInt(8)),
                Made.HERE);
    }

    private Across taperPin(Section.Round round, Length start) {
        return new Across.TaperPin(
                "pin hole",
                Size.general(sizes.written(round.length().mm() > 12 ? "4 mm" : "2 mm")),
                sizes.plain(start.mm() + round.length().mm() / 2),
                random.nextBoolean() ? "collar" : "",
                Angle.degrees(90 * random.nextInt(4)),
                Made.HERE);
    }

    private Across slit(Body.Turned body) {
        boolean bored = body.inside().stream().anyMatch(bore -> bore.depth() instanceof Depth.Through);
        double length = body.length().mm() * 0.8;
        return new Across.Slit(
                "saw cut",
                Size.general(sizes.written("1 mm")),
                sizes.plain(body.length().mm() * 0.1),
                sizes.plain(length),
                bored ? Across.Walls.ONE : Across.Walls.BOTH,
                Angle.degrees(45 * random.nextInt(8)),
                Made.HERE);
    }

    private List<InBore> inBores(Body.Turned body) {
        return body.inside().stream()
                .filter(bore -> bore instanceof Bore.Bored || bore instanceof Bore.Reamed)
                .findFirst()
                .map(bore -> List.of(inBore(bore, body.length().mm())))
                .orElse(List.of());
    }

    private InBore inBore(Bore bore, double length) {
        Size width = sizes.plain(Solid.mouthDiameter(bore).mm() / 4);
        Size depth = sizes.plain(Solid.mouthDiameter(bore).mm() / 8);
        Angle around = Angle.degrees(90 * random.nextInt(4));
        return switch (random.nextInt(3)) {
            case 0 -> new InBore.Keyway("keyway in bore 1", bore.name(), width, depth, around, Made.HERE);
            case 1 -> new InBore.OilGroove("oil way", bore.name(), width, depth, run(length), around, Made.HERE);
            default ->
                new InBore.Recess(
                        "recess in bore 1",
                        bore.name(),
                        sizes.plain(length * 0.3),
                        width,
                        sizes.plain(Solid.mouthDiameter(bore).mm() * 1.3),
                        Made.HERE);
        };
    }

    private InBore.Run run(double length) {
        return random.nextBoolean()
                ? new InBore.Run.Open()
                : new InBore.Run.Part(sizes.plain(length * 0.2), sizes.plain(length * 0.2));
    }

    private List<OnEnd> onEnds(Body.Turned body) {
        if (random.nextInt(3) > 0) {
            return List.of();
        }
        double outer = body.outside().getFirst().diameterTowardsA().mm();
        if (body.inside().isEmpty()) {
            return List.of(solidEnd(outer));
        }
        var circle =
                new HoleCircle(2 + random.nextInt(5), sizes.plain(outer * 0.7), Angle.degrees(15 * random.nextInt(24)));
        Depth depth = random.nextBoolean() ? new Depth.Through() : new Depth.Blind(sizes.plain(3));
        return List.of(
                random.nextBoolean()
                        ? new OnEnd.Drilled("holes 1", End.A, circle, depth, sizes.plain(outer * 0.1), Made.HERE)
                        : new OnEnd.Tapped("holes 1", End.A, circle, depth, ScrewThread.parse("M5"), "", Made.HERE));
    }

    private OnEnd solidEnd(double outer) {
        if (random.nextBoolean()) {
            Angle around = Angle.degrees(30 * random.nextInt(12));
            return new OnEnd.Slot("slot 1", End.A, sizes.plain(outer * 0.1), sizes.plain(2), around, Made.HERE);
        }
        CentreHole hole = CentreHole.list().get(random.nextInt(CentreHole.list().size()));
        Stays stays = List.of(Stays.values()).get(random.nextInt(Stays.values().length));
        return new OnEnd.Centre("centre hole 1", End.A, hole, stays, Made.HERE);
    }

    /** One section is to be turned down, the others are there already. */
    private List<Section> altered(List<Section> outside) {
        int here = random.nextInt(outside.size());
        List<Section> altered = new ArrayList<>();
        for (int i = 0; i < outside.size(); i++) {
            Section section = outside.get(i);
            Stretch old = section.stretch();
            double most = Length.most(section.diameterTowardsA(), section.diameterTowardsB())
                    .mm();
            Made made = i == here ? Made.HERE : Made.ALREADY;
            Optional<Size> was = i == here ? Optional.of(sizes.plain(most + 2)) : Optional.empty();
            altered.add(Stretches.put(section, new Stretch(old.name(), old.length(), old.atA(), old.atB(), made, was)));
        }
        return altered;
    }
}
