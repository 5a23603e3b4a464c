package chargehand.method.kit.yaml;

import chargehand.measure.LengthUnit;
import chargehand.method.kit.Kit;
import chargehand.method.kit.Machine;
import chargehand.method.kit.Rates;
import chargehand.method.kit.Tooling;
import chargehand.part.yaml.tree.Fault;
import chargehand.part.yaml.tree.Faults;
import chargehand.part.yaml.tree.Form;
import chargehand.part.yaml.tree.Place;
import chargehand.part.yaml.tree.YamlTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;

/** Reads a kit from the texts of its files. Which files make up a kit, and where they lie, is not known here. */
public final class KitFiles {
    private static final String TOOLING = "tooling";

    private static final List<String> KINDS = Stream.concat(
                    MachineForm.KINDS.stream(), Stream.of(TOOLING, RatesForm.KIND))
            .toList();

    private final List<Machine> machines = new ArrayList<>();
    private final Map<String, String> fileOfMachine = new TreeMap<>();
    private final List<Tooling> tooling = new ArrayList<>();
    private final List<FileFault> faults = new ArrayList<>();
    private Optional<Rates> rates = Optional.empty();
    private boolean machineSeen;
    private boolean toolingSeen;

    private KitFiles() {}

    /**
     * Reads a kit.
     *
     * @param files the text of each file by its name
     */
    public static KitRead read(Map<String, String> files) {
        KitFiles reading = new KitFiles();
        new TreeMap<>(files).forEach(reading::file);
        return reading.result();
    }

    /** The JSON Schema of a kit file, as text. */
    public static String schema() {
        return SchemaText.of(Kit.class, "kit.schema.json");
    }

    private void file(String name, String text) {
        Faults inFile = new Faults();
        YamlTree.read(text, inFile)
                .flatMap(twig -> Form.open(twig, "a file of the kit", inFile, LengthUnit.MILLIMETRE))
                .ifPresent(form -> contents(name, form));
        inFile.list().forEach(fault -> faults.add(new FileFault(name, fault)));
    }

    private void contents(String file, Form form) {
        String kind = form.oneOf(KINDS, Keys.OF_FILES).orElse("");
        if (kind.equals(TOOLING)) {
            toolingSeen = true;
            ToolingForm.read(form).ifPresent(tooling::add);
        } else if (kind.equals(RatesForm.KIND)) {
            rates(file, form);
        } else if (!kind.isEmpty()) {
            machineSeen = true;
            Place place = form.place(kind);
            MachineForm.read(form, kind).ifPresent(machine -> add(file, place, machine));
        }
    }

    private void rates(String file, Form form) {
        if (rates.isPresent()) {
            Place place = form.place(RatesForm.KIND);
            faults.add(new FileFault(
                    file,
                    new Fault(
                            place.line(),
                            place.column(),
                            place.path(),
                            KitFault.NAME_TWICE,
                            "Another file of the kit gives rates already: keep one of the two.")));
        }
        RatesForm.read(form).ifPresent(read -> rates = Optional.of(read));
    }

    private void add(String file, Place place, Machine machine) {
        String key = machine.name().toLowerCase(Locale.ROOT);
        String other = fileOfMachine.putIfAbsent(key, file);
        if (other == null) {
            machines.add(machine);
        } else {
            Fault fault = new Fault(
                    place.line(),
                    place.column(),
                    place.path(),
                    KitFault.NAME_TWICE,
                    "A machine called '" + machine.name() + "' is described in " + other
                            + " already: give this one a name of its own.");
            faults.add(new FileFault(file, fault));
        }
    }

    private KitRead result() {
        if (!machineSeen) {
            whole(KitFault.NO_MACHINE, "No file of the kit describes a machine: one at least is needed.");
        }
        if (!toolingSeen) {
            whole(
                    KitFault.NO_TOOLING,
                    "No file of the kit says what tools there are: write one with tooling: at its head.");
        }
        return faults.isEmpty()
                ? new KitRead.Sound(new Kit(machines, ToolingForm.joined(tooling), rates))
                : new KitRead.Refused(faults);
    }

    private void whole(KitFault code, String say) {
        faults.add(new FileFault("", new Fault(1, 1, "", code, say)));
    }
}
