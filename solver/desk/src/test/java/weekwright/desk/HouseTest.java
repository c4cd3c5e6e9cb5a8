package weekwright.desk;

import static com.tngtech.archunit.core.domain.JavaAccess.Predicates.target;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.type;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.name;
import static com.tngtech.archunit.core.domain.properties.HasName.Predicates.nameMatching;
import static com.tngtech.archunit.core.domain.properties.HasOwner.Predicates.With.owner;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noFields;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaAccess;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.time.Clock;
import java.time.ZoneId;
import java.util.Date;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import java.util.TimeZone;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The house: which part may know which. Arrows point one way, from the desk over the engine to the model. */
class HouseTest {
    private static final String[] TIMELESS = {"weekwright.model..", "weekwright.engine..", "weekwright.scenarios.."};

    private static JavaClasses house;

    @BeforeAll
    static void read() {
        house = new ClassFileImporter()
                .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
                .importPackages("weekwright");
    }

    @Test
    void all_parts_are_looked_at() {
        for (String part : new String[] {"model.scenario", "engine.search", "desk.cli", "scenarios"}) {
            assertThat(house.that(resideInAPackage("weekwright." + part))).isNotEmpty();
        }
    }

    @Test
    void the_model_knows_no_engine_no_desk_and_no_tool_of_theirs() {
        noClasses()
                .that()
                .resideInAPackage("weekwright.model..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "weekwright.engine..",
                        "weekwright.desk..",
                        "weekwright.scenarios..",
                        "ai.timefold..",
                        "picocli..")
                .check(house);
    }

    @Test
    void the_engine_knows_the_model_and_nothing_else_of_the_house() {
        noClasses()
                .that()
                .resideInAPackage("weekwright.engine..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("weekwright.desk..", "weekwright.scenarios..", "picocli..")
                .check(house);
    }

    @Test
    void the_scenarios_know_the_model_only() {
        noClasses()
                .that()
                .resideInAPackage("weekwright.scenarios..")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("weekwright.desk..", "weekwright.engine..", "ai.timefold..", "picocli..")
                .check(house);
    }

    @Test
    void the_solver_library_is_known_in_the_search_only() {
        noClasses()
                .that()
                .resideOutsideOfPackage("weekwright.engine.search")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("ai.timefold..")
                .check(house);
    }

    @Test
    void the_command_line_library_is_known_in_the_command_line_only() {
        noClasses()
                .that()
                .resideOutsideOfPackage("weekwright.desk.cli")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("picocli..")
                .check(house);
    }

    @Test
    void the_library_of_the_server_is_known_in_the_page_only() {
        noClasses()
                .that()
                .resideOutsideOfPackage("weekwright.desk.page")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("io.javalin..", "org.eclipse.jetty..", "jakarta.servlet..")
                .check(house);
    }

    @Test
    void what_a_coach_sees_knows_nothing_of_the_command_line() {
        noClasses()
                .that()
                .resideInAnyPackage("weekwright.desk.view..", "weekwright.desk.app", "weekwright.desk.page")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("weekwright.desk.cli")
                .check(house);
    }

    @Test
    void documents_never_change() {
        noFields()
                .that()
                .areDeclaredInClassesThat(resideInAnyPackage(
                        "weekwright.model.scenario",
                        "weekwright.model.plan",
                        "weekwright.model.catalogue",
                        "weekwright.model.rulebook"))
                .should()
                .notBeFinal()
                .check(house);
    }

    @Test
    void no_clock_is_read_but_for_a_search_counted_in_seconds() {
        noClasses()
                .that()
                .resideInAnyPackage(TIMELESS)
                .and()
                .doNotHaveFullyQualifiedName("weekwright.engine.search.Clocked")
                .should()
                .accessTargetWhere(reads(System.class, "currentTimeMillis", "nanoTime"))
                .orShould()
                .accessTargetWhere(reads(Clock.class, "systemUTC", "systemDefaultZone", "system"))
                .orShould()
                .accessTargetWhere(
                        target(owner(resideInAPackage("java.time.."))).and(target(name("now"))))
                .orShould()
                .callConstructor(Date.class)
                .check(house);
    }

    @Test
    void no_zone_or_language_of_the_machine_is_read() {
        noClasses()
                .that()
                .resideInAnyPackage("weekwright..")
                .should()
                .accessTargetWhere(reads(ZoneId.class, "systemDefault"))
                .orShould()
                .accessTargetWhere(reads(TimeZone.class, "getDefault"))
                .orShould()
                .accessTargetWhere(reads(Locale.class, "getDefault"))
                .orShould()
                .callMethod(String.class, "toLowerCase")
                .orShould()
                .callMethod(String.class, "toUpperCase")
                .orShould()
                .callMethod(String.class, "format", String.class, Object[].class)
                .orShould()
                .callMethod(String.class, "formatted", Object[].class)
                .check(house);
    }

    private static DescribedPredicate<JavaAccess<?>> reads(Class<?> of, String... methods) {
        return target(owner(type(of)))
                .and(target(nameMatching(String.join("|", methods))))
                .forSubtype();
    }

    @Test
    void chance_comes_from_a_seed() {
        noClasses()
                .that()
                .resideInAnyPackage("weekwright.model..", "weekwright.engine..", "weekwright.scenarios..")
                .should()
                .callConstructor(Random.class)
                .orShould()
                .callMethod(Math.class, "random")
                .check(house);
    }

    @Test
    void parts_do_not_go_round_in_circles() {
        slices().matching("weekwright.(*)..").should().beFreeOfCycles().check(house);
        for (String part : List.of("engine", "desk", "desk.view", "desk.intake")) {
            slices().matching("weekwright." + part + ".(*)..")
                    .should()
                    .beFreeOfCycles()
                    .check(house);
        }
    }

    @Test
    void what_all_pages_share_knows_none_of_them() {
        noClasses()
                .that()
                .resideInAPackage("weekwright.desk.view")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("weekwright.desk.view.*..")
                .check(house);
    }

    @Test
    void nothing_but_the_program_s_start_ends_the_process() {
        noClasses()
                .that()
                .doNotHaveFullyQualifiedName("weekwright.desk.cli.Main")
                .should()
                .callMethod(System.class, "exit", int.class)
                .check(house);
    }
}
