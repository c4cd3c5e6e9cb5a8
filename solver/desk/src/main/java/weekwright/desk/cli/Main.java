package weekwright.desk.cli;

/** Where the program starts. */
public final class Main {
    private Main() {}

    /** Runs the command given and ends with its exit code. */
    public static void main(String[] arguments) {
        QuietLogging.use();
        System.exit(new Cli(Surroundings.ofTheMachine()).run(arguments));
    }
}
