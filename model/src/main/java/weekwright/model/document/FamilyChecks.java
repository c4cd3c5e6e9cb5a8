package weekwright.model.document;

import java.util.ArrayList;
import java.util.List;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.FamilyPatch;

/**
 * A scenario's own and changed families.
 *
 * @param catalogue families in force, without the faulty ones
 * @param misfits ids of the faulty ones
 */
record FamilyChecks(Catalogue catalogue, List<String> misfits) {

    static FamilyChecks check(List<Node> families, Faults faults) {
        Schema schema = Schemas.of("scenario").property("catalogue").items().orElseThrow();
        List<FamilyPatch> sound = new ArrayList<>();
        List<String> misfits = new ArrayList<>();
        for (Node family : families) {
            if (isSound(family, schema, faults)) {
                sound.add(RecordReader.read(family, schema, FamilyPatch.class));
            } else {
                family.field("id").id().ifPresent(misfits::add);
            }
        }
        return new FamilyChecks(Catalogue.builtIn().with(sound), misfits);
    }

    private static boolean isSound(Node family, Schema schema, Faults faults) {
        if (faults.broken(family) || family.field("id").id().isEmpty()) {
            return false;
        }
        List<String> lines = Catalogue.builtIn().faults(RecordReader.read(family, schema, FamilyPatch.class));
        lines.forEach(line -> Lines.report(line, family, faults));
        return lines.isEmpty();
    }
}
