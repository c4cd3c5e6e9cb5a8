package weekwright.desk.cli;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Objects;
import picocli.CommandLine.MissingParameterException;
import picocli.CommandLine.MutuallyExclusiveArgsException;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.TypeConversionException;
import picocli.CommandLine.UnmatchedArgumentException;
import weekwright.model.scenario.Moment;

/** What is wrong with the way a command was called, in the words of who calls it. */
final class Misuse {
    private Misuse() {}

    /** The sentence, without what would be right. */
    static String said(ParameterException fault) {
        if (fault instanceof UnmatchedArgumentException unmatched && !unmatched.isUnknownOption()) {
            return tooMuch(unmatched);
        }
        String said = Objects.requireNonNullElse(fault.getMessage(), "It cannot be used like this");
        if (fault instanceof MissingParameterException) {
            return missing(said);
        }
        return fault instanceof MutuallyExclusiveArgsException
                ? either(said)
                : said.replaceFirst("^Invalid value for option '([^']+)'( \\([^)]*\\))?: is ", "$1 is ")
                        .replaceFirst(" is not a double$", " is not a number")
                        .replaceFirst(" is not (a long|an int)$", " is not a whole number");
    }

    /** A time as it was given, with a space for the T, too. */
    static Moment moment(String given) {
        try {
            return Moment.typed(given);
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("is \"" + given + "\": give a time, such as 2027-03-01T10:00");
        }
    }

    /** A date as it was given. */
    static LocalDate date(String given) {
        try {
            return LocalDate.parse(given.strip());
        } catch (DateTimeParseException e) {
            throw new TypeConversionException("is \"" + given + "\": give a date, such as 2027-03-01");
        }
    }

    /** The library names what is missing behind a colon, as {@code '--to=TIME', 'PLAN_A'}. */
    private static String missing(String said) {
        String names =
                said.substring(said.lastIndexOf(": ") + 2).replace("'", "").replace('=', ' ');
        if (names.startsWith("(") && names.contains(" | ")) {
            return "Give " + names.substring(1, names.length() - 1).replace(" | ", " or ");
        }
        return names + (names.contains(", ") ? " are missing" : " is missing");
    }

    /** The library names what excludes each other as {@code Error: --moves=N, --seconds=N are mutually exclusive …}. */
    private static String either(String said) {
        return "Give only one of "
                + said.replaceFirst("^Error: ", "")
                        .replaceFirst(" are mutually exclusive.*", "")
                        .replace('=', ' ');
    }

    private static String tooMuch(UnmatchedArgumentException fault) {
        String first = fault.getUnmatched().get(0);
        return fault.getCommandLine().getParent() == null
                ? "No command is called \"" + first + "\""
                : "\"" + first + "\" is more than this command takes";
    }
}
