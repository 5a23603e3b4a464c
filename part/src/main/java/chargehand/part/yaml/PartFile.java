package chargehand.part.yaml;

import chargehand.measure.LengthUnit;
import chargehand.part.LengthWish;
import chargehand.part.Part;
import chargehand.part.check.Finding;
import chargehand.part.check.Findings;
import chargehand.part.check.PartCheck;
import chargehand.part.check.PartRemark;
import chargehand.part.yaml.tree.Faults;
import chargehand.part.yaml.tree.Form;
import chargehand.part.yaml.tree.Place;
import chargehand.part.yaml.tree.Places;
import chargehand.part.yaml.tree.Twig;
import chargehand.part.yaml.tree.YamlTree;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** The written form of a part. */
public final class PartFile {
    private PartFile() {}

    /**
     * Reads a part file and judges the part. Everything wrong with layout, values and single features is told together;
     * how features stand to each other is judged once all of them can be read. Nothing is thrown, whatever the text.
     */
    public static PartReading read(String text) {
        var faults = new Faults();
        Optional<Twig> tree = YamlTree.read(text, faults);
        Optional<PartForm.Draft> draft = tree.flatMap(twig -> Form.open(twig, "a part", faults, LengthUnit.MILLIMETRE))
                .map(PartForm::read);
        if (draft.isEmpty()) {
            return new PartReading.Faulty(faults.list());
        }
        var places = new Places(tree.orElseThrow());
        Optional<Part> part = draft.get().part().filter(read -> faults.isEmpty());
        Findings findings = part.map(PartCheck::of).orElse(draft.get().features());
        findings.faults().forEach(fault -> faults.add(places.nearest(fault.path()), fault.code(), fault.say()));
        return part.filter(read -> faults.isEmpty())
                .<PartReading>map(read -> new PartReading.Read(read, remarks(findings, places)))
                .orElseGet(() -> new PartReading.Faulty(faults.list()));
    }

    /**
     * Writes a part as a file that {@link #read} reads back to an equal part. Sizes keep the words they were written in;
     * comments and the order of keys are not kept.
     */
    public static String write(Part part) {
        return PartWriter.write(part);
    }

    /**
     * A part's file with other wishes about lengths. All else stays as it was written, remarks and the order of keys too,
     * unless it is laid out so that this cannot be done; then it is written anew.
     *
     * @param text that {@code part} was read from
     */
    public static String with(String text, Part part, List<LengthWish> wishes) {
        return WishesInText.with(text, part, wishes);
    }

    /** The JSON Schema (draft 2020-12) of part files, as published beside this module. */
    public static String schema() {
        try (InputStream in = Part.class.getResourceAsStream("part.schema.json")) {
            return new String(Objects.requireNonNull(in, "part.schema.json").readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException("cannot read part.schema.json", e);
        }
    }

    private static List<Remark> remarks(Findings findings, Places places) {
        return findings.remarks().stream().map(remark -> remark(remark, places)).toList();
    }

    private static Remark remark(Finding<PartRemark> remark, Places places) {
        Place place = places.nearest(remark.path());
        return new Remark(place.line(), place.column(), remark.path(), remark.code(), remark.say());
    }
}
