package chargehand.web.kit;

import chargehand.measure.Length;
import chargehand.measure.LengthText;
import chargehand.measure.LengthUnit;
import chargehand.method.kit.Bench;
import chargehand.method.kit.Chuck;
import chargehand.method.kit.ColletSet;
import chargehand.method.kit.Lathe;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Mill;
import chargehand.method.kit.RadialDrill;
import chargehand.method.kit.Saw;
import chargehand.method.kit.ScrewCutting;
import chargehand.method.kit.Slides;
import chargehand.method.kit.Speeds;
import chargehand.method.kit.Vice;
import chargehand.trade.sum.Figure;
import chargehand.trade.sum.FigureText;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** A machine and what it can do at most, in the unit of its own dials first. */
public record MachineFace(String name, String kind, List<Limit> limits) {
    /** One thing it can do, and how far. */
    public record Limit(String label, String say) {}

    /** The face of a machine. */
    static MachineFace of(Machine machine) {
        var limits = new Limits(machine.unit());
        return switch (machine) {
            case Lathe lathe -> new MachineFace(lathe.name(), "centre lathe", limits.of(lathe));
            case Mill mill -> new MachineFace(mill.name(), "milling machine", limits.of(mill));
            case RadialDrill drill -> new MachineFace(drill.name(), "radial drill", limits.of(drill));
            case Saw saw -> new MachineFace(saw.name(), "power saw", limits.of(saw));
            case Bench bench -> new MachineFace(bench.name(), "bench", limits.of(bench));
        };
    }

    private record Limits(LengthUnit unit) {
        List<Limit> of(Lathe lathe) {
            var limits = new ArrayList<Limit>();
            limits.add(new Limit("Turns over the bed", say(lathe.room().overBed())));
            limits.add(new Limit("Turns over the slide", say(lathe.room().overSlide())));
            limits.add(new Limit("Between centres", say(lathe.room().betweenCentres())));
            limits.add(new Limit("Through the spindle", say(lathe.room().spindleBore())));
            limits.add(new Limit("Speeds", speeds(lathe.speeds())));
            limits.add(new Limit("Cross dial", crossDial(lathe.slides())));
            limits.add(new Limit("Change wheels", wheels(lathe.screwCutting())));
            limits.add(new Limit("Held in", held(lathe)));
            return limits;
        }

        List<Limit> of(Mill mill) {
            var limits = new ArrayList<Limit>();
            limits.add(new Limit(
                    "Table goes",
                    say(mill.travels().along()) + " along, "
                            + say(mill.travels().across()) + " across, "
                            + say(mill.travels().up()) + " up"));
            limits.add(new Limit("Speeds", speeds(mill.speeds())));
            limits.add(new Limit("Vices", vices(mill.vices())));
            mill.dividingHead().ifPresent(head -> limits.add(new Limit("Dividing head", head.name())));
            return limits;
        }

        List<Limit> of(RadialDrill drill) {
            return List.of(
                    new Limit("Largest drill in mild steel", say(drill.capacity())),
                    new Limit("Column to spindle", say(drill.room().fromColumn())),
                    new Limit("Under the spindle", say(drill.room().underSpindle())),
                    new Limit("Feeds down", say(drill.room().quill())),
                    new Limit("Speeds", speeds(drill.speeds())),
                    new Limit("Vices", vices(drill.vices())));
        }

        List<Limit> of(Saw saw) {
            return List.of(
                    new Limit("Cuts up to", say(saw.largest())),
                    new Limit("Kerf", say(saw.kerf())),
                    new Limit("Shortest held", say(saw.shortestHeld())));
        }

        List<Limit> of(Bench bench) {
            return List.of(new Limit("Vices", vices(bench.vices())));
        }

        private String say(Length length) {
            return new FigureText(unit, false).of(Figure.of(length));
        }

        private static String speeds(Speeds speeds) {
            return String.format(
                    Locale.ROOT,
                    "%d, from %.0f to %.0f rpm",
                    speeds.plate().size(),
                    speeds.slowest().rpm(),
                    speeds.fastest().rpm());
        }

        private String crossDial(Slides slides) {
            String counts = slides.crossReads().says();
            return LengthText.in(slides.cross().graduation(), unit) + " a division, " + counts;
        }

        private static String wheels(ScrewCutting screwCutting) {
            String box = screwCutting.gearbox().isEmpty()
                    ? ", no gearbox"
                    : ", gearbox of " + screwCutting.gearbox().size();
            return screwCutting.wheels().stream().map(String::valueOf).collect(Collectors.joining(" ")) + box;
        }

        private static String held(Lathe lathe) {
            return Stream.concat(
                            lathe.holders().chucks().stream().map(Chuck::name),
                            lathe.holders().collets().stream().map(ColletSet::name))
                    .collect(Collectors.joining("; "));
        }

        private static String vices(List<Vice> vices) {
            return vices.isEmpty() ? "none" : vices.stream().map(Vice::name).collect(Collectors.joining("; "));
        }
    }
}
