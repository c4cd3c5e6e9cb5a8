package weekwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import weekwright.model.catalogue.Catalogue;
import weekwright.model.catalogue.Family;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.Rulebook;

/** The recipes of DEVELOPERS.md are those that all rules, families, packs, pages and exports that there are have gone by. */
class RecipesTest {
    private static final Path TOP = Path.of("../..").toAbsolutePath().normalize();
    private static final Pattern STEP = Pattern.compile("(?m)^\\d+\\. (.*(?:\\n   .*)*)");
    private static final Pattern SPAN = Pattern.compile("`([^`\n]+)`");

    /** What nobody here can mend has no plan that breaks it: EveryRuleTest names the same. */
    private static final Set<String> ALWAYS_TOLD =
            Set.of("pins", "fixtures-close", "rest-between-fixtures", "softened");

    /** Parts of a page, what is downloaded, and pages that hold something only after a press: each has tests of its own. */
    private static final Set<String> PARTS = Set.of("search", "hold", "could-go", "remedies", "take");

    private static String developers;
    private static List<Path> places;

    @BeforeAll
    static void read() throws IOException {
        developers = Files.readString(TOP.resolve("DEVELOPERS.md"));
        try (Stream<Path> all = Files.walk(TOP)) {
            places = all.map(TOP::relativize)
                    .filter(place -> !place.toString().matches("(.*/)?(target|[.]git)(/.*)?"))
                    .toList();
        }
    }

    private static String recipe(String title) {
        String from = developers.substring(developers.indexOf("\n### " + title + "\n") + 1);
        return from.substring(0, from.indexOf("\n### ", 1));
    }

    private static List<String> steps(String title) {
        return STEP.matcher(recipe(title)).results().map(step -> step.group(1)).toList();
    }

    /** The place that a step begins with. */
    private static Path place(String step) {
        Path ending = Path.of(spans(step).get(0));
        List<Path> found =
                places.stream().filter(place -> place.endsWith(ending)).toList();
        assertThat(found).as("the place of a step: " + step).hasSize(1);
        return TOP.resolve(found.get(0));
    }

    private static List<String> spans(String text) {
        return SPAN.matcher(text).results().map(span -> span.group(1)).toList();
    }

    /** What stands in a file, or in all files of a folder. */
    private static String text(Path place) {
        try (Stream<Path> files = Files.isDirectory(place) ? Files.list(place) : Stream.of(place)) {
            return files.filter(Files::isRegularFile).map(RecipesTest::file).collect(Collectors.joining("\n"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String file(Path file) {
        try {
            return Files.readString(file, StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** Each thing stands, as a whole word, in the place of each step. */
    private static void goesThrough(String title, int atLeast, Predicate<String> leftOut, List<String> things) {
        List<String> steps = steps(title);
        assertThat(steps).as(title).hasSizeGreaterThanOrEqualTo(atLeast);
        assertThat(things).isNotEmpty();
        for (String step : steps) {
            String text = text(place(step));
            List<String> missing = things.stream()
                    .filter(thing -> !leftOut.test(step + thing))
                    .filter(thing -> !Pattern.compile("(?<![\\w-])" + Pattern.quote(thing) + "(?![\\w-])")
                            .matcher(text)
                            .find())
                    .toList();
            assertThat(missing).as(title + ": " + step).isEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"A rule", "A session family", "A pack", "A page", "An export"})
    void every_place_that_a_recipe_names_is_there(String title) {
        List<String> named = spans(recipe(title)).stream()
                .filter(span -> span.matches("[\\w./-]*/[\\w./-]+|[\\w-]+\\.(java|json|md|txt)"))
                .toList();
        assertThat(named).hasSizeGreaterThan(2);
        assertThat(named).allSatisfy(name -> assertThat(places).anyMatch(place -> place.endsWith(Path.of(name))));
    }

    @Test
    void every_rule_has_gone_by_its_recipe() {
        goesThrough(
                "A rule",
                9,
                both -> ALWAYS_TOLD.stream().anyMatch(both::endsWith) && both.contains("RuleExamples"),
                Rulebook.builtIn().rules().stream().map(Rule::id).toList());
    }

    @Test
    void every_family_has_gone_by_its_recipe() {
        Set<String> competitions = Catalogue.builtIn().families().stream()
                .filter(family -> family.content().isEmpty())
                .map(Family::id)
                .collect(Collectors.toSet());
        assertThat(competitions).containsExactlyInAnyOrder("fixture", "court-fixture", "meet-sprint", "meet-lift");
        goesThrough(
                "A session family",
                3,
                both -> competitions.stream().anyMatch(both::endsWith) && both.contains("content.json"),
                Catalogue.builtIn().families().stream().map(Family::id).toList());
    }

    @Test
    void every_pack_has_gone_by_its_recipe() {
        goesThrough(
                "A pack",
                4,
                both -> ALWAYS_TOLD.stream().anyMatch(both::endsWith) && both.contains("RuleExamples"),
                Rulebook.builtIn().rules().stream()
                        .filter(rule -> rule.theme().equals("packs"))
                        .map(Rule::id)
                        .toList());
    }

    @Test
    void every_page_has_gone_by_its_recipe() {
        List<String> pages = addresses(Pattern.compile("\"/w/\\{folder}/([a-z-]+)\""));
        pages.removeAll(PARTS);
        assertThat(pages).contains("knowns", "paper", "log", "rules", "history", "next");
        List<String> steps = steps("A page");
        assertThat(steps).hasSize(6);
        steps.forEach(RecipesTest::place);
        for (String page : pages) {
            assertThat(text(place(steps.get(2)))).contains("\"/w/{folder}/" + page + "\"");
            assertThat(text(place(steps.get(3)))).as(page).contains("/" + page);
            assertThat(text(place(steps.get(4)))).as(page).contains("\"/w/week/" + page + "\"");
            assertThat(text(place(steps.get(5)))).as(page).contains("\"" + page + "\"");
        }
    }

    @Test
    void every_export_has_gone_by_its_recipe() {
        List<String> exports = addresses(Pattern.compile("\"/w/\\{folder}/paper/([a-z-]+)\""));
        assertThat(exports).contains("sheet", "wall", "brief", "calendar", "table");
        List<String> steps = steps("An export");
        assertThat(steps).hasSize(5);
        String readme = text(TOP.resolve("README.md"));
        for (String export : exports) {
            String title = Character.toUpperCase(export.charAt(0)) + export.substring(1);
            assertThat(files(place(steps.get(0)))).as(export).anyMatch(name -> name.startsWith(title));
            assertThat(text(place(steps.get(1)))).contains("\"" + export + "\"");
            assertThat(text(place(steps.get(2)))).contains("paper/" + export);
            assertThat(files(place(steps.get(3))))
                    .as(export)
                    .anyMatch(name -> name.contains(title) && name.endsWith("Test.java"));
            assertThat(text(place(steps.get(4)))).contains("\nweekwright " + export + " ");
            assertThat(readme).contains("\n| `" + export + " ");
        }
    }

    private static List<String> addresses(Pattern address) {
        String routes = text(place("`main/java/weekwright/desk/page`"));
        return Pattern.compile("routes\\.get\\((\"[^\"]+\")")
                .matcher(routes)
                .results()
                .flatMap(route -> address.matcher(route.group(1)).results())
                .map((MatchResult found) -> found.group(1))
                .distinct()
                .collect(Collectors.toCollection(ArrayList::new));
    }

    private static List<String> files(Path folder) {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).toList();
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** The table of the one way through names classes and packages that there are. */
    @Test
    void the_way_through_the_house_is_there() {
        String from = developers.substring(developers.indexOf("## The one way through"));
        List<String> named = Pattern.compile("`((?:desk|engine|model)(?:[.][a-z]+)*[.][A-Z]\\w+)`")
                .matcher(from.substring(0, from.indexOf("\n## ")))
                .results()
                .map(found -> found.group(1))
                .toList();
        assertThat(named).hasSizeGreaterThan(20);
        assertThat(named)
                .allSatisfy(name -> assertThat(Class.forName("weekwright." + name, false, loader()))
                        .isNotNull());
    }

    private static ClassLoader loader() {
        return RecipesTest.class.getClassLoader();
    }
}
