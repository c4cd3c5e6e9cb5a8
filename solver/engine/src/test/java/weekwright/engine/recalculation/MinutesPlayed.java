package weekwright.engine.recalculation;

/** How much of a fixture somebody played: more than an hour, half an hour to an hour, less, or nothing. */
enum MinutesPlayed {
    FULL(10),
    PART(8),
    SHORT(5),
    NONE(0);

    private final int demandTenths;

    MinutesPlayed(int demandTenths) {
        this.demandTenths = demandTenths;
    }

    static MinutesPlayed of(Thing fixture, Person person) {
        int minutes = fixture.minutesPlayed(person);
        return minutes > 60 || (minutes > 0 && minutes >= fixture.minutes())
                ? FULL
                : minutes >= 30 ? PART : minutes > 0 ? SHORT : NONE;
    }

    Fraction demandShare() {
        return Fraction.of(demandTenths, 10);
    }
}
