package weekwright.desk.store;

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

    /** Name of its file while it is being written. */
    String temporary() {
        return "." + file + ".writing";
    }
}
