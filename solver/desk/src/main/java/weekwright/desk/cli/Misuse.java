package weekwright.desk.cli;

import java.util.Objects;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.UnmatchedArgumentException;

/** What is wrong with the way a command was called, in the words of who calls it. */
final class Misuse {
    private Misuse() {}

    /** The sentence, without what would be right. */
    static String said(ParameterException fault) {
        if (fault instanceof UnmatchedArgumentException unmatched && !unmatched.isUnknownOption()) {
            return tooMuch(unmatched);
        }
        String said = Objects.requireNonNullElse(fault.getMessage(), "It cannot be used like this");
        return fault instanceof MissingParameterException
                ? missing(said)
                : said.replaceFirst(" is not a double$", " is not a number")
                        .replaceFirst(" is not (a long|an int)$", " is not a whole number");
    }

    /** The library names what is missing behind a colon, as {@code '--to=TIME', 'PLAN_A'}. */
    private static String missing(String said) {
        String names =
                said.substring(said.lastIndexOf(": ") + 2).replace("'", "").replace('=', ' ');
        return names + (names.contains(", ") ? " are missing" : " is missing");
    }

    private static String tooMuch(UnmatchedArgumentException fault) {
        String first = fault.getUnmatched().get(0);
        return fault.getCommandLine().getParent() == null
                ? "No command is called \"" + first + "\""
                : "\"" + first + "\" is more than this command takes";
    }
}
