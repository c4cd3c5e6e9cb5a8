package weekwright.desk.store;

import java.util.EnumMap;
import java.util.Map;

/** The documents of a folder, the scenario first: the others are read against it. */
enum Part {
    SCENARIO("scenario.json"),
    PLAN("plan.json"),
    LOG("log.json");

    private final String file;

    Part(String file) {
        this.file = file;
    }

    /** Name of its file, in the folder and in every revision. */
    String file() {
        return file;
    }

    /**
     * Documents by the names of their files.
     *
     * @throws IllegalArgumentException when there is another name among them
     */
    static Map<Part, byte[]> named(Map<String, byte[]> files) {
        Map<Part, byte[]> parts = new EnumMap<>(Part.class);
        for (Part part : values()) {
            byte[] file = files.get(part.file);
            if (file != null) {
                parts.put(part, file);
            }
        }
        if (parts.size() != files.size()) {
            throw new IllegalArgumentException("only scenario.json, plan.json and log.json can be taken in");
        }
        return parts;
    }

    /** Name of its file while it is being written. */
    String temporary() {
        return "." + file + ".writing";
    }
}
