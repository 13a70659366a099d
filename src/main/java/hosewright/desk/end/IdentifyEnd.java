package hosewright.desk.end;

import hosewright.desk.Refusals;
import hosewright.thread.Identification;
import hosewright.thread.Measurement;
import java.util.Map;
import java.util.Optional;

/** Tells which end a measured male may be. */
public final class IdentifyEnd {

  /**
   * The ends it may be, likeliest first.
   *
   * @param said what was measured, each in the words it was said in; without a half it is a male
   * @throws hosewright.problem.BadInputException naming everything that cannot be used
   */
  public Identification identify(Map<MeasuredField, String> said) {
    Refusals refusals = new Refusals();
    Measurement measured = new MeasuredForm(said, refusals).read();
    Optional<Identification> found = refusals.read(() -> Identification.identify(measured));
    refusals.throwAny();
    return found.orElseThrow();
  }
}
