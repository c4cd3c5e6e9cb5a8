package weekwright.model;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.List;
import weekwright.model.document.Documents;

/** Reads the data that ship with the program. */
public final class BuiltIn {
    private BuiltIn() {}

    /**
     * Reads a JSON list that lies beside this class.
     *
     * @param schema name of the schema of its entries
     * @throws IllegalStateException when it is missing or damaged: the program was packed wrongly
     */
    public static <T extends Record> List<T> read(String name, String schema, Class<T> type) {
        try (InputStream data = BuiltIn.class.getResourceAsStream(name)) {
            if (data == null) {
                throw new IllegalStateException("the built-in file " + name + " is missing: build the program anew");
            }
            return Documents.readBuiltIn(name, data.readAllBytes(), schema, type);
        } catch (IOException e) {
            throw new UncheckedIOException("the built-in file " + name + " cannot be read", e);
        }
    }
}
