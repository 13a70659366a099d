package hosewright.fleet.record;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.fleet.record.CouplingMap.Gap;
import hosewright.fleet.record.CouplingMap.Pair;
import hosewright.fleet.record.Outlet.Kind;
import hosewright.thread.End;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

final class CouplingsTest {
  private static final Pair NH25 = pair("2.5 NH female swivel", "2.5 NH male");
  private static final Pair NPSH25 = pair("2.5 NPSH female swivel", "2.5 NPSH male");
  private static final Pair STORZ5 = pair("5 Storz", "5 Storz");

  private static Pair pair(String a, String b) {
    return new Pair(End.parse(a), End.parse(b));
  }

  private static Outlet outlet(String id, Kind kind, String end) {
    return new Outlet(id, kind, "Port Harlow", End.parse(end), 1);
  }

  @Test
  void an_apparatus_reaches_a_hydrant_by_a_line_of_its_own_hose() {
    List<Outlet> outlets =
        List.of(
            outlet("Engine 1", Kind.INTAKE, "2.5 NH female swivel"),
            outlet("HY-1", Kind.HYDRANT, "2.5 NH male"));
    assertThat(CouplingMap.gaps(outlets, Map.of("Engine 1", Set.of(NH25)))).isEmpty();
  }

  @Test
  void hose_of_another_thread_does_not_go_on_the_hydrant() {
    List<Outlet> outlets =
        List.of(
            outlet("Engine 2", Kind.INTAKE, "2.5 NPSH female swivel"),
            outlet("HY-1", Kind.HYDRANT, "2.5 NH male"),
            outlet("HY-2", Kind.HYDRANT, "2.5 NH male"),
            outlet("HY-3", Kind.HYDRANT, "2.5 NPSH male"));
    List<Gap> gaps = CouplingMap.gaps(outlets, Map.of("Engine 2", Set.of(NPSH25)));
    assertThat(gaps)
        .singleElement()
        .satisfies(
            gap -> {
              assertThat(gap.hydrants()).isEqualTo(2);
              assertThat(gap.example()).isEqualTo("HY-1");
              assertThat(gap.reason()).contains("none of its hose goes on the hydrant");
            });
  }

  @Test
  void hose_that_fits_the_hydrant_but_not_the_intake_is_said() {
    List<Outlet> outlets =
        List.of(
            outlet("Engine 3", Kind.INTAKE, "4 NH female swivel"),
            outlet("HY-1", Kind.HYDRANT, "5 Storz"));
    assertThat(CouplingMap.gaps(outlets, Map.of("Engine 3", Set.of(STORZ5))))
        .extracting(Gap::reason)
        .containsExactly("its hose goes on the hydrant but not on its own intake");
  }

  @Test
  void one_outlet_that_fits_is_enough() {
    List<Outlet> outlets =
        List.of(
            outlet("Engine 3", Kind.INTAKE, "5 Storz"),
            outlet("HY-1", Kind.HYDRANT, "2.5 NPSH male"),
            outlet("HY-1", Kind.HYDRANT, "5 Storz"));
    assertThat(CouplingMap.gaps(outlets, Map.of())).isEmpty();
  }

  @Test
  void few_sections_of_another_thread_among_many_are_odd() {
    Map<Pair, Integer> sections = new LinkedHashMap<>();
    sections.put(NH25, 900);
    sections.put(NPSH25, 20);
    sections.put(STORZ5, 40);
    assertThat(OddThreads.among(sections))
        .singleElement()
        .satisfies(
            odd -> {
              assertThat(odd.sections()).isEqualTo(20);
              assertThat(odd.joins()).isEqualTo(20);
              assertThat(odd.ofSize()).isEqualTo(920);
            });
  }
}
