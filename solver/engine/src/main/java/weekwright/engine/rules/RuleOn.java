package weekwright.engine.rules;

import weekwright.model.rulebook.RuleLevel;
import weekwright.model.rulebook.RuleSettings;

/** A rule that looks at one kind of view. */
abstract class RuleOn<V extends View> extends JudgedRule {
    RuleOn(String id, RuleSettings settings) {
        super(id, settings);
    }

    RuleOn(String id, RuleSettings settings, RuleLevel level) {
        super(id, settings, level);
    }

    /** Tells the sink what is broken in a view. */
    abstract void judge(V view, Sink sink);

    /** Hands a breach on, if there is one. */
    final void report(Sink sink, V view, Breach breach) {
        if (breach.any()) {
            sink.breach(this, view, breach, view.group().heads);
        }
    }
}
