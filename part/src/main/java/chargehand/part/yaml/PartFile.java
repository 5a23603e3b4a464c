package chargehand.part.yaml;

import chargehand.measure.LengthUnit;
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
import java.util.Optional;

/** The written form of a part. */
public final class PartFile {
    private PartFile() {}

    /**
     * Reads a part file and judges the part. Faults of layout and of single values are told together; when there are none,
     * so are the faults of the shape. Nothing is thrown, whatever the text.
     */
    public static PartReading read(String text) {
        var faults = new Faults();
        Optional<Twig> tree = YamlTree.read(text, faults);
        Optional<Part> part = tree.flatMap(twig -> Form.open(twig, "a part", faults, LengthUnit.MILLIMETRE))
                .flatMap(PartForm::read);
        if (part.isEmpty() || !faults.isEmpty()) {
            return new PartReading.Faulty(faults.list());
        }
        return judged(part.get(), new Places(tree.orElseThrow()));
    }

    /**
     * Writes a part as a file that {@link #read} reads back to an equal part. Sizes keep the words they were written in;
     * comments and the order of keys are not kept.
     */
    public static String write(Part part) {
        return PartWriter.write(part);
    }

    private static PartReading judged(Part part, Places places) {
        Findings findings = PartCheck.of(part);
        if (findings.isSound()) {
            return new PartReading.Read(
                    part,
                    findings.remarks().stream()
                            .map(remark -> remark(remark, places))
                            .toList());
        }
        var faults = new Faults();
        findings.faults().forEach(fault -> faults.add(places.nearest(fault.path()), fault.code(), fault.say()));
        return new PartReading.Faulty(faults.list());
    }

    private static Remark remark(Finding<PartRemark> remark, Places places) {
        Place place = places.nearest(remark.path());
        return new Remark(place.line(), place.column(), remark.path(), remark.code(), remark.say());
    }
}
