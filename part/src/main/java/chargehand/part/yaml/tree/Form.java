package chargehand.part.yaml.tree;

import chargehand.measure.LengthUnit;
import chargehand.measure.Unreadable;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.stream.Stream;

/**
 * A group of keys being read. Each asking notes the key as known; what is wrong is gathered and a stand-in value given, so
 * that reading goes on to the next fault. {@link #build} at the end refuses the keys that nobody asked for and gives the
 * made thing only if nothing was wrong since the form was opened.
 */
public final class Form {
    private static final int MOST_SAID_BACK = 40;

    private final Twig.Branch branch;
    private final Faults faults;
    private final LengthUnit bareUnit;
    private final Set<String> known = new LinkedHashSet<>();
    private final int faultsBefore;

    private Form(Twig.Branch branch, Faults faults, LengthUnit bareUnit) {
        this.branch = branch;
        this.faults = faults;
        this.bareUnit = bareUnit;
        this.faultsBefore = faults.count();
    }

    /**
     * Opens a form.
     *
     * @param what what is wanted here, such as "a part", for the sentence when it is no group of keys
     * @param bareUnit the unit of bare numbers
     */
    public static Optional<Form> open(Twig twig, String what, Faults faults, LengthUnit bareUnit) {
        if (twig instanceof Twig.Branch branch) {
            return Optional.of(new Form(branch, faults, bareUnit));
        }
        faults.add(
                twig.place(),
                ReadingFault.WRONG_KIND,
                "Here stands " + twig.kind() + ": " + what + " is written as keys with their values.");
        return Optional.empty();
    }

    /** The same keys read with another unit for bare numbers, none of them asked for yet. */
    public Form withBareUnit(LengthUnit unit) {
        return new Form(branch, faults, unit);
    }

    public Place place() {
        return branch.place();
    }

    /** Where the value under a key stands, or this form when there is none. */
    public Place place(String key) {
        return entry(key).map(entry -> entry.value().place()).orElse(branch.place());
    }

    public LengthUnit bareUnit() {
        return bareUnit;
    }

    /** Whether a key stands here; asking makes it a known one. */
    public boolean has(String key) {
        return entry(key).isPresent();
    }

    /** Makes keys known without reading them. */
    public void know(Collection<String> keys) {
        known.addAll(keys);
    }

    /**
     * The one key of several that says what is described here. When there is none or there are two, that is refused and
     * every key of {@code all} is known, so that only those are refused which would be wrong for any of them.
     *
     * @param all every key that any of these things may have
     */
    public Optional<String> oneOf(List<String> keys, Collection<String> all) {
        List<String> there = keys.stream().filter(this::has).toList();
        if (there.size() == 1) {
            return Optional.of(there.getFirst());
        }
        know(all);
        if (there.size() > 1) {
            refuse(
                    there.get(1),
                    ReadingFault.KEYS_CLASH,
                    "'" + there.get(0) + "' and '" + there.get(1)
                            + "' cannot both stand here: make two entries of them.");
        } else if (unknown().allMatch(key -> NearWords.near(key, keys).isEmpty())) {
            refuse(
                    ReadingFault.KEY_MISSING,
                    "This says nothing of what it is: one of " + String.join(", ", keys) + " is wanted.");
        }
        refuseUnknown();
        return Optional.empty();
    }

    private Stream<String> unknown() {
        return branch.entries().keySet().stream().filter(key -> !known.contains(key));
    }

    private Optional<Twig.Entry> entry(String key) {
        known.add(key);
        return Optional.ofNullable(branch.entries().get(key));
    }

    /** Refuses what is written under a key. */
    public void refuse(String key, Enum<?> code, String say) {
        faults.add(place(key), code, say);
    }

    /** Refuses the whole form. */
    public void refuse(Enum<?> code, String say) {
        faults.add(branch.place(), code, say);
    }

    /** The text under a key that must be there; empty where it is refused. */
    public String text(String key) {
        return value(key, Function.identity(), "");
    }

    /** The text under a key that may be there. */
    public Optional<String> findText(String key) {
        return find(key, Function.identity());
    }

    /**
     * What is written under a key that must be there.
     *
     * @param reader reads it, throwing {@link Unreadable}
     * @param standIn the value to go on with when it is refused
     */
    public <T> T value(String key, Function<String, T> reader, T standIn) {
        if (!has(key)) {
            missing(key);
            return standIn;
        }
        return find(key, reader).orElse(standIn);
    }

    private void missing(String key) {
        faults.add(branch.place(), ReadingFault.KEY_MISSING, "'" + key + "' is missing here.");
    }

    /** What is written under a key that may be there. */
    public <T> Optional<T> find(String key, Function<String, T> reader) {
        return entry(key).flatMap(entry -> leaf(key, entry)).flatMap(leaf -> read(leaf, reader));
    }

    private Optional<Twig.Leaf> leaf(String key, Twig.Entry entry) {
        if (entry.value() instanceof Twig.Leaf leaf && !leaf.text().isEmpty()) {
            return Optional.of(leaf);
        }
        if (entry.value() instanceof Twig.Leaf leaf) {
            faults.add(
                    leaf.place(),
                    ReadingFault.NOTHING_WRITTEN,
                    "Nothing is written at '" + key + "'"
                            + (leaf.remarked() ? ": a value that begins with # stands in quotes." : "."));
        } else {
            faults.add(
                    entry.value().place(),
                    ReadingFault.WRONG_KIND,
                    "'" + key + "' takes a single value, not " + entry.value().kind() + ".");
        }
        return Optional.empty();
    }

    private <T> Optional<T> read(Twig.Leaf leaf, Function<String, T> reader) {
        try {
            return Optional.of(reader.apply(leaf.text()));
        } catch (Unreadable e) {
            faults.add(leaf.place(), ReadingFault.UNREADABLE, e.say());
            return Optional.empty();
        }
    }

    /** The group of keys under a key that must be there. */
    public Optional<Form> form(String key) {
        if (!has(key)) {
            missing(key);
        }
        return entry(key).flatMap(entry -> open(entry.value(), "'" + key + "'", faults, bareUnit));
    }

    /**
     * Reads each entry of the list under a key; none when the key is not there.
     *
     * @param reader makes a thing of a form and its number, counted from 1, or nothing when it is refused
     */
    public <T> List<T> rows(String key, BiFunction<Form, Integer, Optional<T>> reader) {
        List<T> read = new ArrayList<>();
        int number = 1;
        for (Twig item : items(key)) {
            int place = number++;
            open(item, "each entry of '" + key + "'", faults, bareUnit)
                    .flatMap(form -> reader.apply(form, place))
                    .ifPresent(read::add);
        }
        return read;
    }

    /**
     * Reads each text of the list under a key; none when the key is not there.
     *
     * @param reader reads one text, throwing {@link Unreadable}
     */
    public <T> List<T> values(String key, Function<String, T> reader) {
        List<T> values = new ArrayList<>();
        for (Twig item : items(key)) {
            leaf(key, new Twig.Entry(item.place(), item))
                    .flatMap(leaf -> read(leaf, reader))
                    .ifPresent(values::add);
        }
        return values;
    }

    /** The texts of the list under a key; none when the key is not there. */
    public List<String> texts(String key) {
        return values(key, text -> text);
    }

    private List<Twig> items(String key) {
        Optional<Twig.Entry> entry = entry(key);
        if (entry.isEmpty()) {
            return List.of();
        }
        if (entry.get().value() instanceof Twig.Row row) {
            return row.items();
        }
        faults.add(
                entry.get().value().place(),
                ReadingFault.WRONG_KIND,
                "'" + key + "' takes a list, each entry with a dash before it, not "
                        + entry.get().value().kind() + ".");
        return List.of();
    }

    /** Makes the thing, unless something was wrong with this form or with anything read since it was opened. */
    public <T> Optional<T> build(Supplier<T> made) {
        refuseUnknown();
        return isSound() ? Optional.of(made.get()) : Optional.empty();
    }

    /** Whether nothing was found wrong since this form was opened. */
    public boolean isSound() {
        return faults.count() == faultsBefore;
    }

    private static String shortened(String key) {
        return key.length() <= MOST_SAID_BACK ? key : key.substring(0, MOST_SAID_BACK) + "…";
    }

    private void refuseUnknown() {
        unknown().forEach(key -> {
            List<String> near = NearWords.near(key, known);
            String hint = near.isEmpty()
                    ? "Known here: " + String.join(", ", known) + "."
                    : "Perhaps " + String.join(" or ", near) + " is meant.";
            faults.add(
                    Objects.requireNonNull(branch.entries().get(key)).key(),
                    ReadingFault.KEY_UNKNOWN,
                    "'" + shortened(key) + "' is not known here. " + hint);
        });
    }
}
