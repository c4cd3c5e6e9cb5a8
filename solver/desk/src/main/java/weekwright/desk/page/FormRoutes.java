package weekwright.desk.page;

import io.javalin.config.RoutesConfig;
import io.javalin.http.Context;
import weekwright.desk.app.Workplace;
import weekwright.desk.app.Workplace.Seen;
import weekwright.desk.form.Editable;
import weekwright.desk.store.Outcome;
import weekwright.desk.view.page.FormPage;

/**
 * What all forms go through: shown, checked as one types, rows added and taken out, saved or the thing taken out.
 *
 * @param <F> what is edited
 */
abstract class FormRoutes<F extends Editable> {
    private static final int UNUSABLE = 422;
    private static final String ADD = "add:";
    private static final String REMOVE = "remove:";

    final WeekRoutes weeks;
    final Templates templates;

    FormRoutes(WeekRoutes weeks, Templates templates) {
        this.weeks = weeks;
        this.templates = templates;
    }

    /** The thing as it is in force. */
    abstract F form(Context request, Seen seen);

    /** The thing as it was sent. */
    abstract F filled(Context request, Seen seen);

    /** The form as it is shown. */
    abstract FormPage page(Context request, Seen seen, F form);

    /** Answers with the whole page of the form. */
    abstract void whole(Context request, Seen seen, F form);

    /**
     * Saves what was read without a fault.
     *
     * @param out whether the thing was taken out
     */
    abstract Outcome save(Context request, Workplace place, Seen seen, F form, boolean out);

    /** Where to go once it is saved, after the address of the folder. */
    abstract String next(Context request, Seen seen);

    /** The routes of a form at an address. */
    final void addForm(RoutesConfig routes, String address) {
        routes.get(address, this::show);
        routes.post(address, this::done);
        routes.post(address + "/check", this::check);
    }

    private void show(Context request) {
        Seen seen = weeks.place(request).now();
        whole(request, seen, form(request, seen));
    }

    /** The form as it is filled in at this moment: what is wrong with it, field by field. */
    private void check(Context request) {
        Seen seen = weeks.seen(request, weeks.place(request));
        F form = filled(request, seen);
        form.read(true);
        templates.part(request, "faults.jte", "page", page(request, seen, form));
    }

    private void done(Context request) {
        Workplace place = weeks.place(request);
        Seen seen = weeks.seen(request, place);
        String wish = Guards.field(request.formParam("do"));
        boolean out = wish.equals("delete");
        F form = out ? form(request, seen) : filled(request, seen);
        if (wish.startsWith(ADD)) {
            form.grow(wish.substring(ADD.length()));
            again(request, seen, form);
        } else if (wish.startsWith(REMOVE)) {
            form.shrink(wish.substring(REMOVE.length()));
            again(request, seen, form);
        } else if (out ? form.without() : form.read(false)) {
            weeks.done(request, place, seen, save(request, place, seen, form, out), next(request, seen));
        } else {
            request.status(UNUSABLE);
            again(request, seen, form);
        }
    }

    private void again(Context request, Seen seen, F form) {
        if (Templates.isPart(request)) {
            templates.part(request, "form.jte", "page", page(request, seen, form));
        } else {
            whole(request, seen, form);
        }
    }
}
