package hosewright.paper.drawing;

import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.paper.drawing.LaidLine.Numbered;
import hosewright.paper.drawing.LaidLine.Shape;
import hosewright.paper.drawing.LaidLine.Step;
import hosewright.thread.Verdict.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.apache.commons.text.WordUtils;

/** The drawing of a line in letters, from top to bottom. */
final class LineText {
  private final int width;
  private final List<String> lines = new ArrayList<>();

  private LineText(int width) {
    this.width = width;
  }

  static String of(LinePlan plan, int width) {
    LineText text = new LineText(width);
    List<Step> steps = LaidLine.of(plan);
    for (Step step : steps) {
      text.step(step);
      text.branches(step);
    }
    int abreast = plan.layout().abreast();
    if (abreast > 1 && !plan.layout().branched()) {
      text.add("", "(" + plan.layout().sideBySide() + ")");
    }
    return text.lines.stream().collect(Collectors.joining("\n", "", "\n"));
  }

  private void step(Step step) {
    step.leg().ifPresent(this::heading);
    step.upstream().ifPresent(end -> add("  |   ", end.toString()));
    String item = step.part().item().map(number -> " (" + number + ")").orElse("");
    String counted = step.part().count() > 1 ? step.part().count() + " x " : "";
    String again = step.again() ? ", " + step.seenAgain() : "";
    add(sign(step.shape()), counted + step.part().description() + item + again);
    step.inside()
        .ifPresent(
            joint -> add("  :   ", joint.joint().count() + " between them, " + words(joint)));
    step.downstream().ifPresent(end -> add("  |   ", end.toString()));
    step.behind().ifPresent(joint -> add(" (" + joint.letter() + ")  ", words(joint)));
  }

  /** Which leg the parts below are of. */
  private void heading(Leg leg) {
    if (!lines.isEmpty()) {
      add("", "");
    }
    add("", leg.name() + (leg.lines() > 1 ? ", " + leg.lines() + " such lines" : "") + ":");
  }

  /** The other outlets of a wye, off to the side. */
  private void branches(Step step) {
    for (int line = 2; line <= step.branches(); line++) {
      add("  |\\  ", "attack line " + line + ", like the one that goes on below");
    }
  }

  private static String sign(Shape shape) {
    return switch (shape) {
      case OWN -> "[ o ] ";
      case HOSE -> "[===] ";
      case REDUCER -> "[> <] ";
      case FITTING -> "[   ] ";
    };
  }

  private static String words(Numbered numbered) {
    var joint = numbered.joint();
    String verdict =
        joint.fit().verdict() == Outcome.MATES
            ? JointWords.seal(joint.fit().seal()) + (joint.fit().removable() ? "" : ", permanent")
            : JointWords.verdict(joint.fit().verdict()) + ": " + joint.fit().reason();
    return "joint " + numbered.number() + ": " + verdict;
  }

  private void add(String sign, String words) {
    String[] wrapped = WordUtils.wrap(words, width - sign.length(), "\n", true).split("\n");
    for (int i = 0; i < wrapped.length; i++) {
      lines.add((i == 0 ? sign : " ".repeat(sign.length())) + wrapped[i]);
    }
  }
}
