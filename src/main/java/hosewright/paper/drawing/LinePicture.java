package hosewright.paper.drawing;

import hosewright.line.model.Leg;
import hosewright.line.model.LinePlan;
import hosewright.paper.drawing.LaidLine.Numbered;
import hosewright.paper.drawing.LaidLine.Shape;
import hosewright.paper.drawing.LaidLine.Step;
import hosewright.paper.page.Lettering;
import hosewright.paper.page.Picture;
import hosewright.paper.page.Picture.Anchor;
import hosewright.paper.page.Picture.Disc;
import hosewright.paper.page.Picture.Line;
import hosewright.paper.page.Picture.Mark;
import hosewright.paper.page.Picture.Outline;
import hosewright.paper.page.Picture.Words;
import hosewright.thread.End;
import hosewright.thread.Verdict.Outcome;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Lays the drawing of a line out: parts from left to right, as many rows as they need. */
public final class LinePicture {
  private static final double WIDTH = 560;
  private static final double MARGIN = 12;
  private static final int MOST_IN_A_ROW = 5;
  private static final double LEGEND_HEIGHT = 16;
  private static final double AXIS = 38;
  private static final double HALF = 11;
  private static final double JOINT_RADIUS = 7;
  private static final double SMALL = 6.5;
  private static final double PLAIN = 7.5;
  private static final int LINES_BELOW = 4;

  /** What keeps a row of parts off the next, and is not wanted under the last. */
  private static final double BELOW_THE_LAST = 8;

  private static final double HEADING = 12;

  private final List<Mark> marks = new ArrayList<>();
  private final List<Step> steps;
  private final int perRow;
  private final double cell;
  private final double rowHeight;

  private LinePicture(List<Step> steps) {
    this.steps = steps;
    int rows = Math.max(1, (steps.size() + MOST_IN_A_ROW - 1) / MOST_IN_A_ROW);
    this.perRow = Math.max(1, (steps.size() + rows - 1) / rows);
    this.cell = (WIDTH - 2 * MARGIN) / perRow;
    int most = steps.stream().mapToInt(step -> label(step).size()).max().orElse(1);
    this.rowHeight = AXIS + HALF + 26 + most * PLAIN * 1.2;
  }

  /** The whole drawing. */
  public static Picture of(LinePlan plan) {
    return Picture.below(pieces(plan));
  }

  /**
   * The drawing in pieces that stand one below another and may lie on pages of their own: where
   * legs part or meet, first how they do, then each leg; else one.
   */
  public static List<Picture> pieces(LinePlan plan) {
    List<Step> steps = LaidLine.of(plan);
    if (!plan.layout().branched()) {
      return List.of(new LinePicture(steps).drawn(repeated(plan)));
    }
    List<Picture> pieces = new ArrayList<>();
    pieces.add(CoursePicture.of(plan));
    List<List<Step>> legs = LaidLine.byLeg(steps);
    for (int i = 0; i < legs.size(); i++) {
      pieces.add(new LinePicture(legs.get(i)).leg(i == legs.size() - 1));
    }
    return pieces;
  }

  private Picture drawn(String repeated) {
    parts();
    LaidLine.dividesAt(steps).ifPresent(this::branches);
    double height = rows() * rowHeight - BELOW_THE_LAST + LEGEND_HEIGHT;
    legend(height, repeated);
    return new Picture(WIDTH, height, marks);
  }

  /** One leg of several, under its name. */
  private Picture leg(boolean last) {
    Leg leg = steps.get(0).leg().orElseThrow();
    String such = leg.lines() > 1 ? ", " + leg.lines() + " such lines" : "";
    words(MARGIN, HEADING - 3, PLAIN + 1, Anchor.START, leg.name() + such);
    parts();
    double height = rows() * rowHeight + (last ? LEGEND_HEIGHT : 0);
    if (last) {
      legend(height, "");
    }
    return new Picture(WIDTH, height, marks);
  }

  private int rows() {
    return Math.max(1, (steps.size() + perRow - 1) / perRow);
  }

  private void parts() {
    for (int i = 0; i < steps.size(); i++) {
      part(steps.get(i), left(i), top(i) + AXIS);
    }
    // Joints come last, so that they lie over the parts they join.
    for (int i = 0; i < steps.size(); i++) {
      double x = left(i) + cell;
      double y = top(i) + AXIS;
      steps.get(i).behind().ifPresent(joint -> joint(joint, x, y));
    }
  }

  private void legend(double height, String repeated) {
    words(
        MARGIN,
        height - 5,
        SMALL,
        Anchor.START,
        repeated
            + "G gasket   S sealant on the thread   L lugs and face gasket   X does not fit   "
            + "? measure first.   Numbers are those of the joints list. Not to scale.");
  }

  private static String repeated(LinePlan plan) {
    int abreast = plan.layout().abreast();
    return plan.layout()
        .dividesAt()
        .map(node -> "Behind the wye: " + plan.layout().branches(node) + " such lines.   ")
        .orElse(abreast > 1 ? plan.layout().sideBySide() + ".   " : "");
  }

  /** The other outlets of a wye: short lines that leave it and say where they go. */
  private void branches(int place) {
    double x = left(place) + cell / 2 + cell * 0.15;
    double y = top(place) + AXIS;
    for (int line = 2; line <= steps.get(place).branches(); line++) {
      double down = HALF * (line == 2 ? 0.75 : -0.75);
      marks.add(new Line(x, y + down, x + 8, y + down, 1.6));
      words(x + 10, y + down + 2.5, SMALL, Anchor.START, "line " + line);
    }
  }

  private double left(int index) {
    return MARGIN + index % perRow * cell;
  }

  private double top(int index) {
    return (double) (index / perRow) * rowHeight;
  }

  private void part(Step step, double x, double y) {
    double centre = x + cell / 2;
    shape(step, x, y);
    end(step.upstream(), x + JOINT_RADIUS, y, Anchor.START);
    end(step.downstream(), x + cell - JOINT_RADIUS, y, Anchor.END);
    double baseline = y + HALF + 14;
    for (String line : label(step)) {
      words(centre, baseline, PLAIN, Anchor.MIDDLE, line);
      baseline += PLAIN * 1.2;
    }
    words(centre, baseline, SMALL, Anchor.MIDDLE, LaidLine.origin(step));
  }

  /** What a part is, in as many lines as there is room for. */
  private List<String> label(Step step) {
    String counted = step.part().count() > 1 ? step.part().count() + " \u00d7 " : "";
    List<String> lines =
        Lettering.sans().wrap(counted + step.part().description(), PLAIN, cell - 22);
    if (lines.size() <= LINES_BELOW) {
      return lines;
    }
    List<String> kept = new ArrayList<>(lines.subList(0, LINES_BELOW));
    kept.set(LINES_BELOW - 1, kept.get(LINES_BELOW - 1) + "\u2026");
    return kept;
  }

  private void shape(Step step, double x, double y) {
    double from = x + JOINT_RADIUS;
    double to = x + cell - JOINT_RADIUS;
    double middle = cell * 0.3;
    double centre = x + cell / 2;
    boolean first = step == steps.get(0);
    boolean last = step == steps.get(steps.size() - 1);
    if (step.shape() == Shape.HOSE) {
      hose(step, from, to, y);
      return;
    }
    // The pipe through the part; the line's two outer ends have none.
    marks.add(new Line(first ? centre : from, y, last ? centre : to, y, 3));
    if (step.shape() == Shape.REDUCER) {
      boolean narrows =
          step.part().upstream().get().sizeIn() > step.part().downstream().get().sizeIn();
      double in = narrows ? HALF : HALF * 0.55;
      double out = narrows ? HALF * 0.55 : HALF;
      marks.add(
          new Outline(
              List.of(
                  centre - middle / 2,
                  y - in,
                  centre + middle / 2,
                  y - out,
                  centre + middle / 2,
                  y + out,
                  centre - middle / 2,
                  y + in),
              1.2,
              1));
    } else {
      double stroke = step.shape() == Shape.OWN ? 2.4 : 1.2;
      marks.add(Outline.box(centre - middle / 2, y - HALF, middle, 2 * HALF, stroke, 1));
    }
  }

  private void hose(Step step, double from, double to, double y) {
    double coupling = 8;
    marks.add(Outline.box(from + coupling, y - 6, to - from - 2 * coupling, 12, 1.2, 0.85));
    marks.add(Outline.box(from, y - 8, coupling, 16, 1.2, 0.4));
    marks.add(Outline.box(to - coupling, y - 8, coupling, 16, 1.2, 0.4));
    step.inside()
        .ifPresent(
            joint ->
                words(
                    (from + to) / 2,
                    y + 2.5,
                    SMALL,
                    Anchor.MIDDLE,
                    joint.joint().count()
                        + (joint.joint().count() == 1 ? " joint " : " joints ")
                        + joint.letter()
                        + ", no. "
                        + joint.number()));
  }

  private void end(Optional<End> end, double x, double y, Anchor anchor) {
    if (end.isEmpty()) {
      return;
    }
    List<String> lines = Lettering.sans().wrap(end.get().toString(), SMALL, cell / 2 - 10);
    double baseline = y - HALF - 5 - (lines.size() - 1) * SMALL * 1.2;
    for (String line : lines) {
      words(x, baseline, SMALL, anchor, line);
      baseline += SMALL * 1.2;
    }
  }

  private void joint(Numbered joint, double x, double y) {
    boolean mates = joint.joint().fit().verdict() == Outcome.MATES;
    marks.add(new Disc(x, y, JOINT_RADIUS, mates ? 1.2 : 2.6, 1));
    words(x, y + 2.8, 8, Anchor.MIDDLE, joint.letter());
    words(x, y + JOINT_RADIUS + 8, SMALL, Anchor.MIDDLE, String.valueOf(joint.number()));
  }

  private void words(double x, double y, double sizePt, Anchor anchor, String text) {
    marks.add(new Words(x, y, sizePt, anchor, text));
  }
}
