package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;
import weekwright.desk.app.Workplace;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.form.RuleForm;
import weekwright.desk.store.Outcome;
import weekwright.desk.view.page.FormField;
import weekwright.desk.view.page.FormPage;
import weekwright.desk.view.page.RulesPages;
import weekwright.desk.view.page.WordsPage;
import weekwright.model.rulebook.Rule;
import weekwright.model.rulebook.Rulebook;
import weekwright.model.scenario.Group;
import weekwright.model.scenario.Scenario;

/** Every rule in words, a form to change it for all or for a group, and the words of the page. */
final class RuleRoutes extends FormRoutes<RuleForm> {
    private static final String ALL = "all";

    RuleRoutes(WeekRoutes weeks, Templates templates) {
        super(weeks, templates);
    }

    void add(RoutesConfig routes) {
        routes.get("/w/{folder}/rules", this::rules);
        routes.get("/w/{folder}/words", this::words);
        addForm(routes, "/w/{folder}/rules/{scope}/{rule}");
    }

    private void rules(Context request) {
        Seen seen = weeks.place(request).now();
        String of = request.queryParam("of");
        int group = of == null ? -1 : group(seen.scenario(), of);
        Group chosen = group < 0 ? null : seen.scenario().groups().get(group);
        templates.page(
                request,
                "rules.jte",
                RulesPages.of(WeekRoutes.base(request), seen.scenario(), weeks.saved(seen), chosen));
    }

    private void words(Context request) {
        Scenario scenario = weeks.place(request).now().scenario();
        templates.page(request, "words.jte", new WordsPage(WeekRoutes.base(request), scenario.title()));
    }

    private static int group(Scenario scenario, String id) {
        List<String> ids = scenario.groups().stream().map(Group::id).toList();
        if (!ids.contains(id)) {
            throw Refusal.nothingThere();
        }
        return ids.indexOf(id);
    }

    private static Rule rule(Context request) {
        return Rulebook.builtIn().find(request.pathParam("rule")).orElseThrow(Refusal::nothingThere);
    }

    @Override
    RuleForm form(Context request, Seen seen) {
        String scope = request.pathParam("scope");
        int group = scope.equals(ALL) ? -1 : group(seen.scenario(), scope);
        return RuleForm.of(seen.scenario(), rule(request), group);
    }

    private static @Nullable String groupLabel(Context request, Scenario scenario) {
        String scope = request.pathParam("scope");
        return scope.equals(ALL)
                ? null
                : scenario.groups().get(group(scenario, scope)).label();
    }

    @Override
    FormPage page(Context request, Seen seen, RuleForm form) {
        Rule rule = rule(request);
        String base = WeekRoutes.base(request);
        String scope = request.pathParam("scope");
        String label = groupLabel(request, seen.scenario());
        List<String> said = new ArrayList<>();
        said.add(rule.sentence());
        said.add("Costs: " + rule.cost() + ".");
        said.add("Source: " + rule.source() + ".");
        said.add("What differs from the usual is named beside the plan, under “Rules changed here”.");
        FormField shown = form.shown();
        return new FormPage(
                base,
                base + "/rules/" + scope + "/" + rule.id(),
                rule.title() + (label == null ? "" : ", for " + label),
                base + "/rules" + (label == null ? "" : "?of=" + scope),
                seen.revision().number(),
                false,
                "As usual again",
                said,
                form.elsewhere(),
                shown);
    }

    @Override
    RuleForm filled(Context request, Seen seen) {
        return form(request, seen).filled(request.formParamMap());
    }

    @Override
    void whole(Context request, Seen seen, RuleForm form) {
        templates.page(request, "rule.jte", page(request, seen, form));
    }

    @Override
    Outcome save(Context request, Workplace place, Seen seen, RuleForm form, boolean out) {
        String label = "Rule “" + rule(request).title() + "” " + (out ? "as usual again" : "changed");
        return place.change(seen.revision().number(), label, form.changed());
    }

    @Override
    String next(Context request, Seen seen) {
        String scope = request.pathParam("scope");
        return "/rules" + (scope.equals(ALL) ? "" : "?of=" + scope);
    }
}
