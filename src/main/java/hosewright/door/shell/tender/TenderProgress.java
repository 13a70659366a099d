package hosewright.door.shell.tender;

import hosewright.desk.tender.Watcher;
import hosewright.door.shell.run.Notices;
import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.function.Supplier;

/** Says how many jobs are done and how long the rest will take, once a second at most. */
final class TenderProgress implements Watcher {
  private static final Duration PACE = Duration.ofSeconds(1);

  private final Notices notices;
  private final Supplier<Instant> clock;
  private int jobs;
  private int before;
  private Instant start;
  private Instant said;

  TenderProgress(Notices notices, Supplier<Instant> clock) {
    this.notices = notices;
    this.clock = clock;
  }

  @Override
  public void begins(int doneBefore, int jobsInAll) {
    before = doneBefore;
    jobs = jobsInAll;
    start = clock.get();
    said = start;
    if (before > 0) {
      notices.say(String.format(Locale.ROOT, "Going on after %,d of %,d jobs.", before, jobs));
    }
  }

  @Override
  public void done(int done) {
    Instant now = clock.get();
    if (Duration.between(said, now).compareTo(PACE) >= 0) {
      said = now;
      notices.progress(sentence(Duration.between(start, now), done));
    }
  }

  @Override
  public void ends() {
    notices.over();
  }

  String sentence(Duration gone, int done) {
    String far = String.format(Locale.ROOT, "%,d of %,d jobs", done, jobs);
    if (done <= before) {
      return far;
    }
    double each = gone.toMillis() / 1000.0 / (done - before);
    return far + ", " + time(Math.round(each * (jobs - done))) + " left";
  }

  private static String time(long seconds) {
    if (seconds < 90) {
      return seconds + " s";
    }
    long minutes = Math.round(seconds / 60.0);
    return minutes < 90 ? minutes + " min" : minutes / 60 + " h " + minutes % 60 + " min";
  }
}
