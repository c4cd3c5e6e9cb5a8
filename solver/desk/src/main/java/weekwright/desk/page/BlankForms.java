package weekwright.desk.page;

import io.javalin.http.Context;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.FirstWeek;
import weekwright.desk.app.InputFault;
import weekwright.desk.view.page.StartPage.BlankForm;
import weekwright.desk.view.page.StartPage.DayField;
import weekwright.desk.view.page.StartPage.FixtureField;
import weekwright.desk.view.page.StartPage.PlaceField;
import weekwright.model.scenario.ClockTime;
import weekwright.model.scenario.Facility;
import weekwright.model.scenario.FacilityKind;
import weekwright.model.scenario.Fixture;
import weekwright.model.scenario.Moment;
import weekwright.model.scenario.Weekday;
import weekwright.model.scenario.Window;

/** The form for a blank week: as it is filled in, and what it means. */
final class BlankForms {
    private static final List<String> DAYS =
            List.of("Monday", "Tuesday", "Wednesday", "Thursday", "Friday", "Saturday", "Sunday");
    private static final List<String> PLACES =
            List.of("Running track", "Grass or turf field", "Hill", "Hall", "Weights room", "Pool");
    private static final int FIXTURES = 3;
    private static final String FROM = "09:00";
    private static final String TO = "17:00";

    /** The form before anything is typed in. */
    static final BlankForm EMPTY = new BlankForm(
            "",
            "",
            "",
            IntStream.range(0, DAYS.size())
                    .mapToObj(day -> new DayField(Weekday.values()[day].name(), DAYS.get(day), day < 5, FROM, TO))
                    .toList(),
            IntStream.range(0, FIXTURES)
                    .mapToObj(i -> new FixtureField("", "", ""))
                    .toList(),
            Arrays.stream(FacilityKind.values())
                    .map(kind -> new PlaceField(
                            kind.id(),
                            PLACES.get(kind.ordinal()),
                            kind == FacilityKind.FIELD || kind == FacilityKind.GYM,
                            PLACES.get(kind.ordinal())))
                    .toList());

    private BlankForms() {}

    /** The form as it was sent. */
    static BlankForm of(Context request) {
        List<String> days = request.formParams("day");
        List<String> places = request.formParams("place");
        return new BlankForm(
                text(request, "title"),
                text(request, "firstDay"),
                text(request, "zone"),
                EMPTY.days().stream()
                        .map(day -> new DayField(
                                day.id(),
                                day.label(),
                                days.contains(day.id()),
                                text(request, "from-" + day.id()),
                                text(request, "to-" + day.id())))
                        .toList(),
                fixtures(request),
                EMPTY.places().stream()
                        .map(place -> new PlaceField(
                                place.id(),
                                place.kind(),
                                places.contains(place.id()),
                                text(request, "place-name-" + place.id())))
                        .toList());
    }

    private static List<FixtureField> fixtures(Context request) {
        List<String> labels = request.formParams("fixture");
        List<String> dates = request.formParams("fixtureDate");
        List<String> times = request.formParams("fixtureTime");
        return IntStream.range(0, FIXTURES)
                .mapToObj(i -> new FixtureField(at(labels, i), at(dates, i), at(times, i)))
                .toList();
    }

    private static String at(List<String> values, int index) {
        return index < values.size() ? values.get(index).strip() : "";
    }

    private static String text(Context request, String field) {
        return Guards.field(request.formParam(field)).strip();
    }

    /**
     * The week that a form asks for.
     *
     * @throws InputFault with all that is missing or cannot be
     */
    static FirstWeek week(BlankForm form) {
        Reading reading = new Reading();
        LocalDate firstDay = reading.typed.date("the first day", form.firstDay());
        ZoneId zone = reading.zone(form.zone());
        List<Window> windows = reading.windows(form.days());
        List<Fixture> fixtures = reading.fixtures(form.fixtures());
        if (form.title().isEmpty()) {
            reading.problems.add("the week has no name: say what it is for");
        }
        if (!reading.problems.isEmpty() || firstDay == null || zone == null) {
            throw new InputFault(reading.problems);
        }
        return new FirstWeek(form.title(), firstDay, zone, windows, fixtures, places(form.places()));
    }

    private static List<Facility> places(List<PlaceField> places) {
        return places.stream()
                .filter(PlaceField::chosen)
                .map(place -> new Facility(
                        place.id(),
                        place.label().isEmpty() ? place.kind() : place.label(),
                        List.of(kind(place.id())),
                        null,
                        null,
                        List.of(),
                        List.of()))
                .toList();
    }

    private static FacilityKind kind(String id) {
        return Arrays.stream(FacilityKind.values())
                .filter(kind -> kind.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** Reads fields, and gathers what is wrong with them. */
    private static final class Reading {
        private final Typed typed = new Typed();
        private final List<String> problems = typed.problems;

        @Nullable
        ZoneId zone(String text) {
            if (ZoneId.getAvailableZoneIds().contains(text)) {
                return ZoneId.of(text);
            }
            problems.add("the clocks are those of \"" + text + "\": give a zone, such as Europe/Dublin");
            return null;
        }

        List<Window> windows(List<DayField> days) {
            List<Window> windows = new ArrayList<>();
            for (DayField day : days) {
                if (day.chosen()) {
                    window(day, windows);
                }
            }
            if (days.stream().noneMatch(DayField::chosen)) {
                problems.add("no day is chosen: tick those on which the squad can train");
            }
            return windows;
        }

        private void window(DayField day, List<Window> windows) {
            try {
                ClockTime from = ClockTime.parse(day.from());
                ClockTime to = ClockTime.parse(day.to());
                if (from.compareTo(to) >= 0) {
                    problems.add(day.label() + " goes from " + from + " to " + to + ": its end must come later");
                    return;
                }
                windows.add(new Window(List.of(Weekday.valueOf(day.id())), null, from, to, null, null));
            } catch (IllegalArgumentException e) {
                problems.add(day.label() + " goes from \"" + day.from() + "\" to \"" + day.to()
                        + "\": give times, such as 16:00");
            }
        }

        List<Fixture> fixtures(List<FixtureField> fields) {
            List<Fixture> fixtures = new ArrayList<>();
            for (FixtureField field : fields) {
                boolean nothing = (field.label() + field.date() + field.time()).isEmpty();
                Moment start = nothing ? null : typed.start(field.label(), field.date(), field.time());
                if (start != null) {
                    String label = field.label().isEmpty() ? "Fixture" : field.label();
                    fixtures.add(FirstWeek.fixture(fixtures.size() + 1, label, start));
                }
            }
            return fixtures;
        }
    }
}
