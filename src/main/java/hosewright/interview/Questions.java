package hosewright.interview;

import static hosewright.interview.Question.answered;
import static hosewright.interview.Question.says;

import hosewright.line.JobField;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** What is asked, in the order in which a person at the counter would. */
final class Questions {
  private final List<Question> order = new ArrayList<>();

  /**
   * @param forQuote whether a customer must be named
   */
  Questions(boolean forQuote) {
    order.add(Question.of(JobField.FROM, "What does the line start at?"));
    order.add(Question.of(JobField.TO, "What must it feed?"));
    order.add(Question.of(JobField.LENGTH, "How far is it along the ground?"));
    order.add(Question.of(JobField.RISE, "How much higher is the far end?"));
    order.add(Question.of(JobField.FLOW, "How much water should arrive?"));
    order.add(Question.of(JobField.NEED, "What pressure does it need there?"));
    order.add(
        Question.of(JobField.STATIC, "Was the hydrant tested? Its pressure with nothing flowing?")
            .when(says(JobField.FROM, "hydrant")));
    order.add(
        Question.of(JobField.RESIDUAL, "And its pressure while the test flowed?")
            .when(answered(JobField.STATIC))
            .asNeeded());
    order.add(
        Question.of(JobField.AT, "How much flowed in that test?")
            .when(answered(JobField.STATIC))
            .asNeeded());
    order.add(
        Question.of(JobField.SOURCE_PRESSURE, "What pressure does the source hold?")
            .when(answered(JobField.STATIC).or(answered(JobField.PUMP_CURVE)).negate()));
    order.add(Question.of(JobField.USE, "What is it for?"));
    order.add(
        Question.of(JobField.DISTRICT, "In which fire district is it?")
            .when(says(JobField.USE, "fire")));
    // A pumper's line to hand nozzles is the one that usually divides.
    order.add(
        Question.of(JobField.ATTACK_LINES, "Does it divide at a wye, each line to its own nozzle?")
            .when(
                says(JobField.FROM, "pump")
                    .and(says(JobField.TO, "nozzle"))
                    .and(says(JobField.USE, "fire"))));
    order.add(
        Question.of(JobField.ATTACK_LENGTH, "How far is it from the wye to each nozzle?")
            .when(answered(JobField.ATTACK_LINES))
            .asNeeded());
    order.add(Question.of(JobField.SIZE, "Must the hose be of one size?"));
    order.add(
        Question.of(JobField.ATTACK_SIZE, "And the hose behind the wye?")
            .when(answered(JobField.ATTACK_LINES)));
    order.add(Question.of(JobField.ACCESSORIES, "Anything else with it?"));
    Question customer = Question.of(JobField.CUSTOMER, "Whose prices?");
    order.add(forQuote ? customer.asNeeded() : customer);
    order.add(Question.of(JobField.TITLE, "A short name for the papers?"));
  }

  /** The first question that matters and is neither answered nor passed over. */
  Optional<Question> next(Map<JobField, String> answers, Set<JobField> passed) {
    return order.stream()
        .filter(question -> !answers.containsKey(question.field()))
        .filter(question -> !passed.contains(question.field()))
        .filter(question -> question.matters().test(answers))
        .findFirst();
  }

  Question of(JobField field) {
    return order.stream().filter(question -> question.field() == field).findFirst().orElseThrow();
  }
}
