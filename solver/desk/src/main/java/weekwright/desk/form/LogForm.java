package weekwright.desk.form;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.jspecify.annotations.Nullable;
import weekwright.desk.view.page.FormField;
import weekwright.desk.view.page.FormField.Control;
import weekwright.model.change.AsPlanned;
import weekwright.model.document.DocumentException;
import weekwright.model.document.Documents;
import weekwright.model.document.Shape;
import weekwright.model.plan.Log;
import weekwright.model.scenario.LogEntry;
import weekwright.model.scenario.Scenario;

/** What was done of a session or a fixture, in a form; read with the whole log as if it came from a file. */
public final class LogForm implements Editable {
    private static final String ENTRIES = "entries";

    private final Scenario scenario;
    private final Map<String, Object> document;
    private final int index;
    private final boolean there;
    private Map<String, Object> entry;
    private Wrong wrong = Wrong.nothing();
    private List<String> unread = List.of();
    private String fresh = "";
    private @Nullable Log changed;

    private LogForm(Scenario scenario, Log log, AsPlanned planned) {
        this.scenario = scenario;
        this.document = Documents.apart(log);
        List<LogEntry> entries = log.entries();
        int found = -1;
        for (int i = 0; i < entries.size(); i++) {
            found = planned.isOf(entries.get(i)) ? i : found;
        }
        there = found >= 0;
        index = there ? found : entries.size();
        entry = there
                ? Paths.map(Paths.list(document.get(ENTRIES)).get(found))
                : Paths.map(Paths.list(Documents.apart(new Log(1, scenario.id(), List.of(planned.entry())))
                                .get(ENTRIES))
                        .get(0));
    }

    /**
     * The form of something planned.
     *
     * @param log what was written down so far, or null
     * @param planned how it would be written down if it went as planned
     */
    public static LogForm of(Scenario scenario, @Nullable Log log, AsPlanned planned) {
        return new LogForm(scenario, log == null ? new Log(Scenario.VERSION, scenario.id(), List.of()) : log, planned);
    }

    private static Shape shape() {
        return Objects.requireNonNull(Documents.shape("log").field(ENTRIES).items());
    }

    /** Whether it was written down before. */
    public boolean isThere() {
        return there;
    }

    /**
     * Fills the form with what was sent.
     *
     * @param quick lines of names, efforts, minutes and times; may be empty
     * @param metres length of the runs whose times stand in them
     */
    public LogForm filled(Map<String, List<String>> sent, String quick, String metres) {
        entry = new Sent(sent).fields(shape(), entry, ENTRIES, "");
        QuickLines lines = new QuickLines(scenario, OtherUnits.read(metres.strip(), "m", false));
        List<Object> people = lines.over(Paths.list(entry.get("people")), quick);
        if (!people.isEmpty()) {
            entry.put("people", people);
        }
        unread = lines.faults();
        return this;
    }

    @Override
    public void grow(String list) {
        fresh = Rows.grown(shape(), entry, list);
    }

    @Override
    public void shrink(String row) {
        Rows.shrunk(shape(), entry, row);
    }

    @Override
    public boolean read(boolean half) {
        List<Object> entries = Paths.list(document.get(ENTRIES));
        if (index < entries.size()) {
            entries.set(index, entry);
        } else {
            entries.add(entry);
        }
        document.put(ENTRIES, entries);
        return whole(half) && unread.isEmpty();
    }

    @Override
    public boolean without() {
        List<Object> entries = Paths.list(document.get(ENTRIES));
        if (index < entries.size()) {
            entries.remove(index);
        }
        document.put(ENTRIES, entries);
        return whole(false);
    }

    private boolean whole(boolean half) {
        changed = null;
        try {
            changed = Documents.readLog(
                    "the form", Documents.writeAny(document).getBytes(StandardCharsets.UTF_8), scenario);
            wrong = Wrong.nothing();
        } catch (DocumentException e) {
            wrong = Wrong.of(e.problems(), ENTRIES + "[" + index + "]", half, path -> path);
        }
        return changed != null;
    }

    /** The log with the entry as it was sent; only where nothing is wrong. */
    public Log changed() {
        if (changed == null) {
            throw new IllegalStateException("what is wrong has to be mended first");
        }
        return changed;
    }

    @Override
    public FormField shown() {
        Map<String, Object> values = new LinkedHashMap<>(entry);
        List<FormField> parts = new Fields(new Offers(scenario), wrong, fresh).of(shape(), values, ENTRIES, "");
        return new FormField(Control.PART, "", "", "", "", false, false, "", "", List.of(), parts, List.of(), false);
    }

    @Override
    public List<String> elsewhere() {
        List<String> all = new ArrayList<>(unread);
        all.addAll(wrong.rest());
        return all;
    }
}
