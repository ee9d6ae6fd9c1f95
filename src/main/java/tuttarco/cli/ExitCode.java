package tuttarco.cli;

/** What the shell is told. Part of the contract with scripts; the README lists them. */
enum ExitCode {
    DONE(0),
    /** A defect of Tuttarco's own. */
    DEFECT(1),
    USAGE(2),
    INPUT(3),
    NOTHING_READ(4),
    OUTPUT(5),
    INTERRUPTED(130);

    private final int number;

    ExitCode(int number) {
        this.number = number;
    }

    int number() {
        return number;
    }
}
