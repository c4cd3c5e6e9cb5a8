package weekwright.engine.explain;

import java.util.List;
import java.util.regex.Pattern;
import weekwright.engine.problem.GroupInfo;
import weekwright.engine.problem.Problem;

/** Says which group a sentence is about, where a scenario has several and the sentence does not say so itself. */
final class GroupNames {
    private final Problem problem;

    GroupNames(Problem problem) {
        this.problem = problem;
    }

    /** A sentence about a group. */
    String named(GroupInfo group, String sentence) {
        return named(List.of(group), sentence);
    }

    /** A sentence about some groups. */
    String named(List<GroupInfo> groups, String sentence) {
        if (problem.groups.size() < 2 || groups.stream().allMatch(group -> says(sentence, label(group)))) {
            return sentence;
        }
        return Names.list(groups.stream().map(GroupNames::label).toList()) + ": " + sentence;
    }

    /** Whether a label stands in a sentence as words of its own. */
    private static boolean says(String sentence, String label) {
        return Pattern.compile("(?<![\\p{L}\\p{N}])" + Pattern.quote(label) + "(?![\\p{L}\\p{N}])")
                .matcher(sentence)
                .find();
    }

    private static String label(GroupInfo group) {
        return group.group.label();
    }
}
