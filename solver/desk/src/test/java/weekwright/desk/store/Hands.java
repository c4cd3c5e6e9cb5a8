package weekwright.desk.store;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock that stands until it is moved. */
final class Hands extends Clock {
    private Instant now;

    Hands(String now) {
        this(Instant.parse(now));
    }

    Hands(Instant now) {
        this.now = now;
    }

    void move(Duration by) {
        now = now.plus(by);
    }

    @Override
    public Instant instant() {
        return now;
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        throw new UnsupportedOperationException("only instants are asked for");
    }
}
