package weekwright.model;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import tools.jackson.core.StreamReadFeature;
import tools.jackson.core.type.TypeReference;
import tools.jackson.databind.json.JsonMapper;

/** Reads the data that ship with the program. */
public final class BuiltIn {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .build();

    private BuiltIn() {}

    /**
     * Reads a JSON file that lies beside this class.
     *
     * @throws IllegalStateException when it is missing: the program was packed wrongly
     */
    public static <T> T read(String name, TypeReference<T> type) {
        try (InputStream data = BuiltIn.class.getResourceAsStream(name)) {
            if (data == null) {
                throw new IllegalStateException("the built-in file " + name + " is missing: build the program anew");
            }
            return MAPPER.readValue(data, type);
        } catch (IOException e) {
            throw new UncheckedIOException("the built-in file " + name + " cannot be read", e);
        }
    }
}
