package hosewright.door.shell;

import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZoneOffset;

/** A clock a test sets, to let a year pass or to turn it back. */
final class WallClock extends Clock {
  private Instant now;

  WallClock(String day) {
    set(day);
  }

  /** Noon of a day. */
  void set(String day) {
    now = LocalDate.parse(day).atTime(LocalTime.NOON).toInstant(ZoneOffset.UTC);
  }

  @Override
  public Instant instant() {
    return now;
  }

  @Override
  public ZoneId getZone() {
    return ZoneId.of("UTC");
  }

  @Override
  public Clock withZone(ZoneId zone) {
    throw new UnsupportedOperationException("tests tell the time in UTC");
  }
}
