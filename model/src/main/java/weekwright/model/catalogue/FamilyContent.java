package weekwright.model.catalogue;

import java.util.List;

/** What is done in the sessions of a built-in family. */
public record FamilyContent(String id, List<Content> content) {}
