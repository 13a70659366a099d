package hosewright.thread;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.csv.PlainNumber;
import hosewright.csv.ReferenceTable;
import hosewright.thread.Verdict.Outcome;
import hosewright.thread.Verdict.Seal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class MatingTest {

  @ParameterizedTest
  @CsvSource(
      textBlock =
          """
          2.5 NH male        | 2.5 NH female swivel   | mates   | gasket | yes
          2.5 NH male        | 2.5 NH female          | mates   | gasket | yes
          2.5 NH male        | 1.5 NH female          | no      | none   | no
          2.5 NH male        | 2.5 NH male            | no      | none   | no
          2.5 NH female      | 2.5 NH female swivel   | no      | none   | no
          0.75-8 NH male     | 1 NH female            | mates   | gasket | yes
          1 NH male          | 0.75-8 NH female       | mates   | gasket | yes
          0.75-8 NH male     | 0.75 GHT female        | no      | none   | no
          8 NH male          | 8 NH female            | measure | none   | no
          1.5 NPSH male      | 1.5 NPSH female swivel | mates   | gasket | yes
          1.5 NPSH male      | 2 NPSH female          | no      | none   | no
          2 NPT male         | 2 NPSH female swivel   | mates   | gasket | yes
          2 NPT male         | 1.5 NPSH female swivel | no      | none   | no
          2 NPSH male        | 2 NPT female           | jams    | none   | no
          2 NPT male         | 2 NPT female           | mates   | thread | no
          2 NPT male         | 2 NPT female swivel    | no      | none   | no
          2 NPT male         | 1.5 NPT female         | no      | none   | no
          2 NPSM male        | 2 NPSM female swivel   | mates   | lug    | yes
          2 NPT male         | 2 NPSM female swivel   | no      | none   | no
          0.75 GHT male      | 0.75 GHT female swivel | mates   | gasket | yes
          0.75 GHT male      | 0.75 NPSH female       | no      | none   | no
          2 G male           | 2 G female swivel      | mates   | gasket | yes
          2 R male           | 2 R female             | mates   | thread | no
          2 R male           | 2 G female             | mates   | thread | no
          2 R male           | 2 Rp female            | mates   | thread | no
          2 R male           | 2 G female swivel      | no      | none   | no
          2 R male           | 2 R female swivel      | no      | none   | no
          2 G male           | 2 R female             | no      | none   | no
          2 G male           | 2 Rp female            | measure | none   | no
          0.5 G male         | 0.5 NPT female         | no      | none   | no
          0.5 NPT male       | 0.5 G female           | no      | none   | no
          2 R male           | 2 NPT female           | no      | none   | no
          2.5 PCT male       | 2.5 PCT female swivel  | mates   | gasket | yes
          2.5 NYFT male      | 2.5 NH female          | no      | none   | no
          2.5 AMA male       | 2.5 BCT female         | measure | none   | no
          2.5 BAT male       | 2.5 AMA female         | measure | none   | no
          2.5 AMA male       | 2.5 AMA female         | mates   | gasket | yes
          1.5 CFD male       | 1.5 CHI female         | measure | none   | no
          2.5 QST male       | 2.5 NH female          | measure | none   | no
          2.5 QST male       | 2.5 QST female         | measure | none   | no
          0.75 CHT male      | 0.75-8 NH female       | measure | none   | no
          5 Storz            | 5 Storz                | mates   | lug    | yes
          5 Storz            | 4 Storz                | no      | none   | no
          1.65 Storz         | 2 Storz                | mates   | lug    | yes
          4 Storz            | 4.33 Storz             | measure | none   | no
          5 Storz            | 5 NH male              | no      | none   | no
          1.5 forestry       | 1.5 forestry           | mates   | lug    | yes
          1.5 forestry       | 1.5 Storz              | no      | none   | no
          2 cam plug         | 2 cam socket           | mates   | gasket | yes
          2 cam plug         | 3 cam socket           | no      | none   | no
          2 cam plug         | 2 cam plug             | no      | none   | no
          2 cam plug         | 2 NPT female           | no      | none   | no
          2.5 instantaneous male | 2.5 instantaneous female | mates | gasket | yes
          2.5 instantaneous male | 2.5 NH female      | no      | none   | no
          """,
      delimiter = '|')
  void the_law_says(String a, String b, String outcome, String seal, String removable) {
    Verdict verdict = Mating.of(End.parse(a), End.parse(b));

    assertThat(verdict.outcome())
        .isEqualTo(Outcome.valueOf(outcome.toUpperCase(java.util.Locale.ROOT)));
    assertThat(verdict.seal()).isEqualTo(Seal.valueOf(seal.toUpperCase(java.util.Locale.ROOT)));
    assertThat(verdict.removable()).isEqualTo(removable.equals("yes"));
  }

  @Test
  void every_pair_has_one_verdict_whatever_the_order() {
    for (End a : Families.ends()) {
      for (End b : Families.ends()) {
        Verdict verdict = Mating.of(a, b);
        assertThat(verdict).isNotNull().isEqualTo(Mating.of(b, a));
        if (verdict.reason().isBlank()
            || verdict.source().isBlank()
            || verdict.reason().contains("{")) {
          throw new AssertionError(a + " and " + b + ": " + verdict);
        }
        if (verdict.mates() == (verdict.seal() == Seal.NONE)
            || (!verdict.mates() && verdict.removable())) {
          throw new AssertionError(a + " and " + b + ": " + verdict);
        }
      }
    }
  }

  @Test
  void no_nh_joins_another_family_and_no_like_halves_join() {
    for (End a : Families.ends()) {
      for (End b : Families.ends()) {
        boolean nhWithOther = a.family().equals("NH") != b.family().equals("NH");
        boolean alike = a.gender() == b.gender() && a.gender() != Gender.SEXLESS;
        if ((nhWithOther || alike) && Mating.of(a, b).mates()) {
          throw new AssertionError(a + " must not mate " + b);
        }
      }
    }
  }

  @Test
  void joints_across_families_are_only_the_known_ones() {
    List<String> across =
        Families.ends().stream()
            .flatMap(a -> Families.ends().stream().map(b -> new End[] {a, b}))
            .filter(p -> p[0].gender() == Gender.MALE && !p[0].family().equals(p[1].family()))
            .filter(p -> Mating.of(p[0], p[1]).mates())
            .map(p -> p[0].family() + " into " + p[1].family())
            .distinct()
            .sorted()
            .toList();

    assertThat(across).containsExactly("NPT into NPSH", "R into G", "R into Rp");
  }

  @Test
  void joints_across_sizes_are_only_the_known_ones() {
    List<String> across =
        Families.ends().stream()
            .flatMap(a -> Families.ends().stream().map(b -> new End[] {a, b}))
            .filter(p -> p[0].sizeIn() < p[1].sizeIn() && Mating.of(p[0], p[1]).mates())
            .map(
                p ->
                    PlainNumber.of(p[0].sizeIn())
                        + "/"
                        + PlainNumber.of(p[1].sizeIn())
                        + " "
                        + p[0].family())
            .distinct()
            .toList();

    assertThat(across).containsExactlyInAnyOrder("0.75/1 NH", "1.65/2 Storz");
  }

  @Test
  void taper_joints_are_permanent_and_never_in_a_swivel() {
    for (End a : Families.ends()) {
      for (End b : Families.ends()) {
        Verdict verdict = Mating.of(a, b);
        if (verdict.seal() == Seal.THREAD && (verdict.removable() || a.swivel() || b.swivel())) {
          throw new AssertionError(a + " and " + b + ": " + verdict);
        }
      }
    }
  }

  @Test
  void figures_nobody_published_are_never_called_a_joint() {
    for (End a : Families.ends()) {
      boolean unknown = ThreadTable.find(a).filter(r -> !r.figuresHeld()).isPresent();
      for (End b : Families.ends()) {
        if (unknown && Mating.of(a, b).mates()) {
          throw new AssertionError(a + " and " + b + ": no figures are known");
        }
      }
    }
    assertThat(Mating.sameByName(End.parse("2.5 QST male"), End.parse("2.5 QST female"))).isTrue();
    assertThat(Mating.sameByName(End.parse("2.5 QST male"), End.parse("2.5 NH female"))).isFalse();
  }

  @Test
  void a_gasketed_joint_has_exactly_one_gasket_and_a_lug_joint_of_sexless_halves_two() {
    for (End a : Families.ends()) {
      for (End b : Families.ends()) {
        Verdict verdict = Mating.of(a, b);
        int gaskets = (a.carriesGasket() ? 1 : 0) + (b.carriesGasket() ? 1 : 0);
        boolean sexless = a.gender() == Gender.SEXLESS;
        if ((verdict.seal() == Seal.GASKET && gaskets != 1)
            || (verdict.seal() == Seal.LUG && sexless && gaskets != 2)) {
          throw new AssertionError(a + " and " + b + " have " + gaskets);
        }
      }
    }
  }

  @Test
  void a_pipe_end_on_a_hose_gasket_needs_a_square_end() {
    // ASME B1.20.1-2013 section 1.2 (the joint); common practice, no source (the square end).
    Verdict verdict = Mating.of(End.parse("2 NPT male"), End.parse("2 NPSH female swivel"));

    assertThat(verdict.engagement()).contains("square, burr-free end face");
  }

  @Test
  void a_straight_male_jams_in_a_taper_female() {
    Verdict verdict = Mating.of(End.parse("1.5 NPSH male"), End.parse("1.5 NPT female"));

    assertThat(verdict.engagement()).isEqualTo("grabs one or two turns, then jams");
  }

  @Test
  void an_end_in_no_table_is_to_be_measured() {
    End odd = new End(7, "NH", Gender.MALE, false);
    End stranger = new End(2, "nothing known", Gender.FEMALE, false);

    assertThat(Mating.of(odd, stranger).outcome()).isEqualTo(Outcome.MEASURE);
    assertThat(Mating.of(odd, stranger)).isEqualTo(Mating.of(stranger, odd));
  }

  @Test
  void every_rule_is_reached_by_some_pair() {
    List<JointRule> rules = ReferenceTable.rows("threads/joint-rules.csv", JointRule::of);
    for (JointRule rule : rules) {
      boolean reached =
          Families.ends().stream()
              .anyMatch(
                  a ->
                      Families.ends().stream()
                          .anyMatch(
                              b ->
                                  Mating.of(a, b).source().equals(rule.verdict().source())
                                      && Mating.of(a, b).outcome() == rule.verdict().outcome()
                                      && Mating.of(a, b)
                                          .reason()
                                          .startsWith(opening(rule.verdict().reason()))));
      assertThat(reached).as(rule.name()).isTrue();
    }
  }

  private static String opening(String reason) {
    int gap = reason.indexOf('{');
    return gap < 0 ? reason : reason.substring(0, gap);
  }
}
