package weekwright.engine.recalculation;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.StaffMember;

/** Who leads what. */
final class Staffing extends Judge {
    private record Duty(String session, String lead, Instant start, Instant end) {}

    private static final String NOBODY = "nobody";

    private final List<Duty> duties = new ArrayList<>();

    Staffing(Case the, Ledger ledger) {
        super(the, ledger);
    }

    @Override
    void judge() {
        leadFree();
    }

    /** A session that somebody listed may lead has one of them, present and free; given leads come first. */
    private void leadFree() {
        List<String> groups = the.scenario().groups().stream().map(Group::id).toList();
        List<Thing> sessions = the.placements().stream()
                .filter(session -> the.scenario().staff().stream().anyMatch(member -> mayLead(member, session)))
                .sorted(Comparator.comparing((Thing session) -> session.lead() == null)
                        .thenComparing(Thing::start)
                        .thenComparing(Thing::end)
                        .thenComparing(session -> session.trains().id())
                        .thenComparing(session -> groups.indexOf(session.group()))
                        .thenComparing(Thing.IN_TIME))
                .toList();
        for (Thing session : sessions) {
            List<StaffMember> free = the.scenario().staff().stream()
                    .filter(member -> session.lead() == null || member.id().equals(session.lead()))
                    .filter(member -> mayLead(member, session) && isThere(member, session) && isFree(member, session))
                    .sorted(Comparator.comparingInt(Staffing::families).thenComparing(StaffMember::id))
                    .toList();
            if (free.isEmpty()) {
                must("lead-free", session.key(), session.group(), shareOfThosePresent(session));
            }
            String lead = session.lead() != null
                    ? session.lead()
                    : free.isEmpty() ? NOBODY : free.get(0).id();
            duties.add(new Duty(session.key(), lead, session.start(), session.end()));
        }
    }

    /** Who leads which session, by key, once it is judged: those found, and those who are written. */
    Map<String, String> leads() {
        Map<String, String> leads = new LinkedHashMap<>();
        the.placements().stream()
                .filter(session -> session.lead() != null)
                .forEach(session -> leads.put(session.key(), session.lead()));
        duties.stream()
                .filter(duty -> !duty.lead().equals(NOBODY))
                .forEach(duty -> leads.put(duty.session(), duty.lead()));
        return leads;
    }

    /** Those who lead little come first, so that those who lead much stay free. */
    private static int families(StaffMember member) {
        return member.leads().contains("*") ? Integer.MAX_VALUE : member.leads().size();
    }

    private static boolean mayLead(StaffMember member, Thing session) {
        return member.leads().contains("*")
                || member.leads().contains(session.trains().id());
    }

    private boolean isThere(StaffMember member, Thing session) {
        return PlaceAndTime.minutesOutside(
                        session, member.windows(), member.away(), the.scenario().zone())
                == 0;
    }

    private boolean isFree(StaffMember member, Thing session) {
        long atOnce = duties.stream()
                .filter(duty -> duty.lead().equals(member.id()))
                .filter(duty ->
                        duty.start().isBefore(session.end()) && session.start().isBefore(duty.end()))
                .count();
        return atOnce < member.atOnce();
    }
}
