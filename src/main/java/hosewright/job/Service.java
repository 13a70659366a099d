package hosewright.job;

import hosewright.job.question.Answers;
import hosewright.job.question.JobField;
import hosewright.job.question.Use;
import java.util.OptionalDouble;

/**
 * What flows, and for what.
 *
 * @param fluid "water" or what else the parts must be marked for
 * @param temperatureF °F; empty when not stated
 */
public record Service(Use use, String fluid, OptionalDouble temperatureF) {

  static Service read(Answers answers) {
    return new Service(
        answers.of(JobField.USE).orElse(Use.WATER),
        answers.of(JobField.FLUID).orElse("water"),
        answers.number(JobField.TEMPERATURE));
  }

  /** The temperature to take ratings and viscosity at, °F. */
  public double temperatureOrUsualF() {
    return temperatureF.orElse(Limit.WATER_TEMPERATURE_F.value());
  }

  public boolean isWater() {
    return fluid.equals("water");
  }
}
