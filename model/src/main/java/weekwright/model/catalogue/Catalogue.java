package weekwright.model.catalogue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.model.BuiltIn;
import weekwright.model.Nearest;

/** The session families in force: those built in, and what a scenario changes or adds. */
public final class Catalogue {
    private final Map<String, Family> byId;

    private Catalogue(Map<String, Family> byId) {
        this.byId = byId;
    }

    /** The families that come with the program, read once. */
    public static Catalogue builtIn() {
        return Holder.CATALOGUE;
    }

    private static Catalogue of(List<Family> families) {
        Map<String, Family> byId = new LinkedHashMap<>();
        families.forEach(family -> byId.put(family.id(), family));
        return new Catalogue(byId);
    }

    /**
     * This catalogue with a scenario's changes: a known id changes the fields given, another id adds a family at the
     * end.
     *
     * @throws IllegalArgumentException when {@link #faults} finds any
     */
    public Catalogue with(List<FamilyPatch> patches) {
        if (patches.isEmpty()) {
            return this;
        }
        Map<String, Family> changed = new LinkedHashMap<>(byId);
        for (FamilyPatch patch : patches) {
            List<String> faults = faults(patch);
            if (!faults.isEmpty()) {
                throw new IllegalArgumentException(
                        "family " + patch.id() + " cannot be used: " + String.join("; ", faults));
            }
            changed.put(patch.id(), FamilyPatches.merged(changed.get(patch.id()), patch));
        }
        return new Catalogue(changed);
    }

    /**
     * What is wrong with a change, empty when nothing is: one line each, the field's path before the first colon, then
     * what is wrong and what would be right.
     */
    public List<String> faults(FamilyPatch patch) {
        return FamilyFaults.of(byId.get(patch.id()), patch);
    }

    /** The family of this id, if there is one. */
    public Optional<Family> find(String id) {
        return Optional.ofNullable(byId.get(id));
    }

    /**
     * The family of this id.
     *
     * @throws IllegalArgumentException when there is none; the message names the nearest
     */
    public Family family(String id) {
        return find(id).orElseThrow(() -> new IllegalArgumentException(
                "no session family is called \"" + id + "\": " + Nearest.hint(id, byId.keySet())));
    }

    /** All families, the built-in ones first. */
    public List<Family> families() {
        return List.copyOf(byId.values());
    }

    private static final class Holder {
        static final Catalogue CATALOGUE = of(withContent(BuiltIn.read("catalogue.json", "catalogue", Family.class)));

        /** What is done in the sessions lies in a file of its own, for its length. */
        private static List<Family> withContent(List<Family> families) {
            Map<String, List<Content>> content = new LinkedHashMap<>();
            BuiltIn.read("content.json", "content", FamilyContent.class)
                    .forEach(entry -> content.put(entry.id(), entry.content()));
            return families.stream()
                    .map(family -> content.containsKey(family.id())
                            ? family.with(content.getOrDefault(family.id(), List.of()))
                            : family)
                    .toList();
        }
    }
}
