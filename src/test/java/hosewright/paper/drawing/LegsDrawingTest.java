package hosewright.paper.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.line.model.LinePlan;
import hosewright.line.model.WayThrough;
import hosewright.measure.UnitSystem;
import hosewright.paper.drawing.LaidLine.Step;
import hosewright.paper.page.Picture;
import hosewright.paper.page.Picture.Words;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** Papers are read by people: that a drawing shows what is laid is our own rule, no source. */
final class LegsDrawingTest {

  @Test
  void legs_that_part_hang_below_the_place_they_leave() {
    assertThat(LineDrawing.legs(SampleLayouts.tree(), UnitSystem.US, 100))
        .isEqualTo(
            """
            [ o ] pump discharge: 100 psi here
              |   yard: 1 x 100 ft of 2.5 in hose, 250 gpm
            [ < ] Gated wye (N-GATED WYE)
              |-- low: 1 x 100 ft of 2.5 in hose, 250 gpm
              |   [ o ] low nozzle: 90 psi arrive, 60 psi needed
              |-- high: 1 x 150 ft of 2.5 in hose, 250 gpm
                  [ o ] high nozzle: 90 psi arrive, 60 psi needed
            """);
  }

  @Test
  void legs_that_meet_go_on_once_from_where_they_meet() {
    assertThat(LineDrawing.legs(SampleLayouts.joined(), UnitSystem.US, 100))
        .isEqualTo(
            """
            [ o ] pump discharge: 100 psi here
              |-- left: 1 x 300 ft of 2.5 in hose, 250 gpm; meets right
              |-- right: 1 x 350 ft of 2.5 in hose, 250 gpm; meets left
            [ > ] Siamese (N-SIAMESE), where left and right meet
              |   last: 1 x 50 ft of 2.5 in hose, 250 gpm
            [ o ] monitor: 90 psi arrive, 60 psi needed
            """);
  }

  @Test
  void a_drawing_of_legs_keeps_its_width() {
    for (int width : List.of(40, 60, 100)) {
      assertThat(LineDrawing.legs(SampleLayouts.joined(), UnitSystem.US, width).lines())
          .allMatch(line -> line.length() <= width);
    }
  }

  @Test
  void each_leg_is_drawn_with_what_it_begins_at_and_ends_at() {
    List<List<Step>> legs = LaidLine.byLeg(LaidLine.of(SampleLayouts.tree()));

    assertThat(legs).hasSize(3);
    assertThat(legs)
        .extracting(
            steps ->
                steps.stream()
                    .map(step -> step.part().description() + (step.again() ? " again" : ""))
                    .toList())
        .containsExactly(
            List.of("pump discharge", "Hose of yard", "Gated wye"),
            List.of("Gated wye again", "Hose of low", "low nozzle"),
            List.of("Gated wye again", "Hose of high", "high nozzle"));
  }

  @Test
  void every_joint_of_every_leg_is_drawn_once_and_in_order() {
    for (LinePlan plan : List.of(SampleLayouts.tree(), SampleLayouts.joined())) {
      assertThat(LaidLine.of(plan).stream().flatMap(step -> step.behind().stream()))
          .extracting(LaidLine.Numbered::joint)
          .containsExactlyElementsOf(plan.joints());
    }
  }

  @Test
  void what_stands_at_a_place_is_listed_once_among_all_parts() {
    assertThat(SampleLayouts.joined().layout().run())
        .extracting(part -> part.description())
        .containsExactly(
            "pump discharge",
            "Hose of left",
            "Siamese",
            "Hose of right",
            "Hose of last",
            "monitor");
  }

  @Test
  void a_line_of_which_nothing_parts_is_drawn_as_one() {
    assertThat(SampleLayouts.chain().layout().branched()).isFalse();
    assertThat(LinePicture.pieces(SampleLayouts.chain())).hasSize(1);
    assertThat(LaidLine.of(SampleLayouts.chain())).hasSize(5).noneMatch(Step::again);
  }

  @Test
  void a_picture_has_the_legs_first_and_then_a_piece_for_each() {
    List<Picture> pieces = LinePicture.pieces(SampleLayouts.joined());

    assertThat(pieces).hasSize(4);
    assertThat(words(pieces.get(0)))
        .contains("left", "right", "last", "Siamese (N-", "pump discharge", "monitor");
    assertThat(words(pieces.get(2))).startsWith("right|").contains("Hose of right");
    Picture whole = LinePicture.of(SampleLayouts.joined());
    assertThat(whole.height()).isEqualTo(pieces.stream().mapToDouble(Picture::height).sum());
    assertThat(whole.marks()).hasSize(pieces.stream().mapToInt(one -> one.marks().size()).sum());
  }

  @Test
  void nothing_of_a_picture_lies_outside_it() {
    for (LinePlan plan : List.of(SampleLayouts.tree(), SampleLayouts.joined())) {
      Picture picture = LinePicture.of(plan);
      for (Picture.Mark mark : picture.marks()) {
        if (mark instanceof Picture.Line line) {
          assertThat(List.of(line.x1(), line.x2())).allMatch(x -> x >= 0 && x <= picture.width());
          assertThat(List.of(line.y1(), line.y2())).allMatch(y -> y >= 0 && y <= picture.height());
        } else if (mark instanceof Words words) {
          assertThat(words.y()).isBetween(0.0, picture.height());
        }
      }
    }
  }

  @Test
  void every_way_to_an_appliance_has_a_profile_of_its_own() {
    List<WayThrough> ways = WayThrough.all(SampleLayouts.tree().layout());

    assertThat(ways).extracting(WayThrough::words).containsExactly("yard, low", "yard, high");
    assertThat(ways.get(1).profile())
        .extracting(station -> station.name())
        .containsExactly("begins yard", "ends yard", "begins high", "ends high");
    assertThat(WayThrough.all(SampleLayouts.joined().layout()))
        .extracting(WayThrough::words)
        .containsExactly("left, last", "right, last");
  }

  private static String words(Picture picture) {
    return picture.marks().stream()
        .flatMap(
            mark ->
                mark instanceof Words words
                    ? Optional.of(words.text()).stream()
                    : Optional.<String>empty().stream())
        .collect(Collectors.joining("|"));
  }
}
