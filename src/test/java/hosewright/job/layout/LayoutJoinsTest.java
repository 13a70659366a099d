package hosewright.job.layout;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hosewright.intake.JobText;
import hosewright.problem.BadInputException;
import org.junit.jupiter.api.Test;

/** How legs that meet are said, and what is refused: a form of our own, no source. */
class LayoutJoinsTest {
  private static final String HEAD =
      """
      from: 2.5 NH male pump
      source-pressure: 150 psi
      legs:
      """;
  private static final String MEETING =
      HEAD
          + """
            - { leg: left, length: 300 ft }
            - { leg: right, length: 350 ft }
            - { leg: monitor, behind: [left, right], length: 25 ft, to: 2.5 NH female monitor, flow: 500 gpm, need: 80 psi }
          """;

  @Test
  void legs_behind_which_one_begins_are_one_leg_that_shares_its_flow() {
    LayoutJob layout = read(MEETING);

    assertThat(layout.legs()).extracting(LegJob::name).containsExactly("left and right", "monitor");
    LegJob both = layout.legs().get(0);
    assertThat(both.flowGpm()).isEqualTo(500);
    assertThat(both.joined()).extracting(LegJob::name).containsExactly("left", "right");
    assertThat(both.joined())
        .extracting(leg -> leg.job().run().lengthFt())
        .containsExactly(300.0, 350.0);
    assertThat(both.outlets()).isEqualTo(2);
    assertThat(layout.legs().get(1).behind()).contains("left and right");
    assertThat(layout.stretches())
        .extracting(LegJob::name)
        .containsExactly("left", "right", "monitor");
  }

  @Test
  void a_point_where_they_end_says_the_same_listed_or_not() {
    String named =
        """
          - { leg: left, ends: siamese, length: 300 ft }
          - { leg: right, ends: siamese, length: 350 ft }
          - { leg: monitor, begins: siamese, length: 25 ft, to: 2.5 NH female monitor, flow: 500 gpm, need: 80 psi }
        """;

    assertThat(read(HEAD + named)).isEqualTo(read(MEETING));
    assertThat(read("points:\n  - { point: siamese, is: join }\n" + HEAD + named))
        .isEqualTo(read(MEETING));
  }

  @Test
  void a_point_where_one_leg_ends_and_others_begin_is_a_split() {
    LayoutJob layout =
        read(
            "points:\n  - { point: wye, is: split }\n"
                + HEAD
                + """
                  - { leg: yard, ends: wye, length: 100 ft }
                  - { leg: one, begins: wye, length: 100 ft, to: 1.5 NH nozzle, flow: 95 gpm, need: 50 psi }
                  - { leg: two, begins: wye, length: 100 ft, to: 1.5 NH nozzle, flow: 95 gpm, need: 50 psi }
                """);

    assertThat(layout.legs())
        .extracting(leg -> leg.behind().orElse(""))
        .containsExactly("", "yard", "yard");
  }

  @Test
  void an_appliance_of_several_inlets_takes_several_legs() {
    LayoutJob layout =
        read(
            """
            points:
              - { point: gun, is: appliance, to: 2.5 NH female monitor, flow: 500 gpm, need: 80 psi }
            """
                + HEAD
                + """
                  - { leg: left, ends: gun, length: 300 ft }
                  - { leg: right, ends: gun, length: 350 ft }
                """);

    assertThat(layout.legs()).hasSize(1);
    assertThat(layout.legs().get(0).last()).isTrue();
    assertThat(layout.legs().get(0).joined()).hasSize(2).allMatch(LegJob::last);
    assertThat(layout.flowGpm()).isEqualTo(500);
  }

  @Test
  void lines_part_and_meet_within_a_longer_way() {
    LayoutJob layout =
        read(
            HEAD
                + """
                  - { leg: yard, length: 100 ft }
                  - { leg: left, behind: yard, length: 300 ft }
                  - { leg: right, behind: yard, length: 350 ft }
                  - { leg: lobby, behind: [left, right], length: 25 ft }
                  - { leg: one, behind: lobby, length: 100 ft, to: 1.5 NH nozzle, flow: 95 gpm, need: 50 psi }
                  - { leg: two, behind: lobby, length: 150 ft, to: 1.5 NH nozzle, flow: 95 gpm, need: 50 psi }
                """);

    assertThat(layout.legs())
        .extracting(LegJob::name)
        .containsExactly("yard", "left and right", "lobby", "one", "two");
    assertThat(layout.legs().get(1).flowGpm()).isEqualTo(190);
  }

  @Test
  void what_was_written_is_read_again_the_same() {
    LayoutText text = JobText.layout(MEETING);

    assertThat(JobText.layout(JobText.write(text))).isEqualTo(text);
  }

  @Test
  void what_cannot_meet_is_named_with_its_leg() {
    refused(
        MEETING.replace("behind: [left, right]", "behind: [left, rigth]"),
        "leg monitor: behind",
        "right");
    refused(
        MEETING.replace("length: 350 ft", "length: 350 ft, rise: 10 ft"),
        "leg right: rise",
        "0.0 ft");
    refused(
        MEETING.replace("leg: right, length", "leg: right, behind: left, length"),
        "leg right: ends",
        "");
    refused(
        MEETING
                .replace("leg: left,", "leg: left, behind: back, ends: siamese,")
                .replace("leg: right,", "leg: right, ends: siamese,")
                .replace("behind: [left, right]", "begins: siamese")
            + "  - { leg: back, behind: monitor, length: 10 ft }\n",
        "leg left: ends",
        "");
    refused(
        HEAD
            + """
              - { leg: left, ends: siamese, length: 300 ft }
              - { leg: right, ends: siamese, length: 350 ft }
            """,
        "point siamese",
        "");
    refused(
        HEAD
            + """
              - { leg: left, ends: siamese, length: 300 ft }
              - { leg: right, length: 350 ft, to: 1.5 NH nozzle, flow: 95 gpm, need: 50 psi }
            """,
        "leg left: ends",
        "");
    refused(MEETING.replace("leg: left,", "leg: left, to: 1.5 NH nozzle,"), "leg left: to", "");
    refused("points:\n  - { point: x, is: joint }\n" + MEETING, "point x: is", "join");
    refused(
        MEETING
            + "  - { leg: more, behind: left, length: 10 ft, to: 1.5 NH nozzle, flow: 9 gpm, need:"
            + " 9 psi }\n",
        "leg more: behind",
        "");
  }

  private static void refused(String text, String field, String nearest) {
    assertThatThrownBy(() -> read(text))
        .as(text)
        .isInstanceOfSatisfying(
            BadInputException.class,
            e ->
                assertThat(e.problems())
                    .anySatisfy(
                        problem -> {
                          assertThat(problem.field()).isEqualTo(field);
                          assertThat(problem.nearest()).isEqualTo(nearest);
                        }));
  }

  private static LayoutJob read(String text) {
    return LayoutForm.read(JobText.layout(text));
  }
}
