package weekwright.desk.form;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.model.document.Problem;

/** What is wrong with a thing, to be shown beside the fields that it concerns; each fault once. */
final class Wrong {
    private static final String MISSING = "is missing";
    private static final String EMPTY = "the list is empty";

    private final Map<String, List<String>> byPath = new LinkedHashMap<>();
    private final List<String> elsewhere = new ArrayList<>();

    /** Nothing is wrong. */
    static Wrong nothing() {
        return new Wrong();
    }

    /**
     * Sorts the faults of a whole document.
     *
     * @param root path of the thing in it, such as {@code fixtures[3]}; empty for all of it
     * @param half whether the form is still being filled in: what is missing is not yet a fault
     */
    static Wrong of(List<Problem> problems, String root, boolean half, Offices offices) {
        Wrong wrong = new Wrong();
        for (Problem problem : problems) {
            boolean missing = problem.wrong().endsWith(MISSING);
            boolean none = problem.wrong().equals(EMPTY);
            if (half && (missing || none)) {
                continue;
            }
            String path = problem.path();
            if (root.isEmpty() || path.equals(root) || path.startsWith(root + ".")) {
                String own = root.isEmpty() ? path : path.substring(Math.min(path.length(), root.length() + 1));
                wrong.add(own, missing ? "" : none ? "Nothing is chosen: choose one or more." : said(problem));
            } else {
                wrong.elsewhere.add(offices.where(path) + ": " + said(problem));
            }
        }
        return wrong;
    }

    private static String said(Problem problem) {
        return problem.wrong() + ". " + problem.right();
    }

    /** Says in words where in the whole a path is. */
    interface Offices {
        String where(String path);
    }

    /** Adds a fault; an empty text says that something is missing. */
    void add(String path, String text) {
        byPath.computeIfAbsent(path, key -> new ArrayList<>()).add(text);
    }

    boolean isEmpty() {
        return byPath.isEmpty() && elsewhere.isEmpty();
    }

    /** Takes the faults of a path. */
    List<String> take(String path) {
        List<String> found = byPath.remove(path);
        return found == null ? List.of() : found;
    }

    /** Takes the faults of a path and of all inside. */
    List<String> takeAll(String path) {
        List<String> found = new ArrayList<>(take(path));
        for (String known : List.copyOf(byPath.keySet())) {
            if (known.startsWith(path + "[") || known.startsWith(path + ".")) {
                found.addAll(take(known));
            }
        }
        return found;
    }

    /** What has found no field. */
    List<String> rest() {
        List<String> rest = new ArrayList<>(elsewhere);
        byPath.forEach((path, texts) -> texts.forEach(
                text -> rest.add((path.isEmpty() ? "" : path + ": ") + (text.isEmpty() ? "this is missing." : text))));
        return rest;
    }
}
