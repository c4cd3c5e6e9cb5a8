package weekwright.desk.form;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import weekwright.model.Nearest;
import weekwright.model.scenario.Athlete;
import weekwright.model.scenario.Scenario;

/**
 * What athletes reported, typed or pasted a line each: name, effort, minutes, times. Parts are divided by tabs, semicolons, or
 * commas with a space.
 */
final class QuickLines {
    private final Scenario scenario;
    private final String metres;
    private final List<String> faults = new ArrayList<>();

    /**
     * Reads lines.
     *
     * @param metres length of the runs whose times stand in them, as typed
     */
    QuickLines(Scenario scenario, String metres) {
        this.scenario = scenario;
        this.metres = metres.strip();
    }

    /** What could not be understood, line by line. */
    List<String> faults() {
        return faults;
    }

    /** People as they were, with what the lines say of them. */
    List<Object> over(List<Object> people, String text) {
        List<Object> all = new ArrayList<>(people);
        int number = 0;
        for (String line : text.lines().toList()) {
            number++;
            if (!line.isBlank()) {
                line(all, number, line.strip().split("\\t|;|,\\s+", -1));
            }
        }
        return all;
    }

    private void line(List<Object> all, int number, String[] parts) {
        String name = parts[0].strip();
        Optional<Athlete> athlete = scenario.athletes().stream()
                .filter(one -> one.name().equalsIgnoreCase(name) || one.id().equals(name))
                .findFirst();
        if (athlete.isEmpty()) {
            List<String> names = scenario.athletes().stream().map(Athlete::name).toList();
            faults.add("line " + number + ": nobody is called \"" + name + "\": " + Nearest.hint(name, names));
            return;
        }
        Map<String, Object> person = person(all, athlete.get().id());
        List<Object> times = new ArrayList<>();
        for (int i = 1; i < parts.length; i++) {
            Object value = number(parts[i].strip());
            if (value == null) {
                continue;
            }
            if (i == 1) {
                person.put("rpe", value);
            } else if (i == 2) {
                person.put("minutes", value);
            } else {
                times.add(value);
            }
        }
        times(number, person, times);
    }

    private void times(int number, Map<String, Object> person, List<Object> times) {
        if (times.isEmpty()) {
            return;
        }
        Object length = number(metres);
        if (length == null) {
            faults.add("line " + number + " has times: say over how many metres");
            return;
        }
        Map<String, Object> result = new LinkedHashMap<>();
        result.put("measure", "sprint");
        result.put("metres", length);
        result.put("seconds", times);
        List<Object> results = Paths.list(person.get("results"));
        results.removeIf(one -> Paths.text(Paths.map(one).get("metres")).equals(Paths.text(length)));
        results.add(result);
        person.put("results", results);
    }

    /** The entry of an athlete, changed where it lies; a new one at the end where there was none. */
    private static Map<String, Object> person(List<Object> all, String athlete) {
        for (int i = 0; i < all.size(); i++) {
            Map<String, Object> one = Paths.map(all.get(i));
            if (athlete.equals(one.get("athlete"))) {
                all.set(i, one);
                return one;
            }
        }
        Map<String, Object> fresh = new LinkedHashMap<>();
        fresh.put("athlete", athlete);
        all.add(fresh);
        return fresh;
    }

    private static @org.jspecify.annotations.Nullable Object number(String text) {
        if (text.isEmpty()) {
            return null;
        }
        String plain = text.replace(',', '.');
        return plain.matches("[0-9]{1,6}(\\.[0-9]{1,6})?") ? new BigDecimal(plain) : text;
    }
}
