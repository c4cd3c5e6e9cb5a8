package weekwright.model.catalogue;

/** One of several close ways to carry out a family, such as a squat with a pause. */
public record Variant(String id, String label, boolean tested) {
    public Variant {
        label = label == null ? id : label;
    }
}
