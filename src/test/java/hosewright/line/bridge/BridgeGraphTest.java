package hosewright.line.bridge;

import static org.assertj.core.api.Assertions.assertThat;

import hosewright.catalogue.Item;
import hosewright.catalogue.ItemKind;
import hosewright.line.assembly.Bridge;
import hosewright.line.search.SmallShop;
import hosewright.thread.End;
import hosewright.thread.Mating;
import hosewright.thread.Verdict;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import org.jgrapht.alg.shortestpath.AllDirectedPaths;
import org.jgrapht.graph.DirectedMultigraph;
import org.junit.jupiter.api.Test;

/** Bridges against every path of a graph that is built another way. */
class BridgeGraphTest {
  private static final List<String> ENDS =
      List.of(
          "1.5 NH male",
          "1.5 NH female swivel",
          "1.5 NH female",
          "2.5 NH male",
          "2.5 NH female swivel",
          "1.5 NPSH male",
          "1.5 NPSH female swivel",
          "1.5 NPT male",
          "1.5 NPT female",
          "2.5 Storz");

  @Test
  void lightest_bridges_are_those_of_all_paths_in_1000_random_sets_of_adapters() {
    int bridged = 0;
    for (int seed = 0; seed < 1_000; seed++) {
      Random random = new Random(seed);
      List<Item> adapters = adapters(random);
      Map<String, Integer> cents = new HashMap<>();
      adapters.forEach(item -> cents.put(item.number(), random.nextInt(4) * 100));
      End from = pick(random);
      End to = pick(random);
      boolean fromPipe = random.nextBoolean();
      boolean toPipe = random.nextBoolean();

      List<List<String>> all = allPaths(adapters, from, to, fromPipe, toPipe);
      List<Integer> allCents =
          all.stream()
              .map(path -> path.stream().mapToInt(step -> cents.get(number(step))).sum())
              .sorted()
              .toList();
      int most = 1 + random.nextInt(40);
      BridgeGraph graph = new BridgeGraph(adapters);
      double[] weights = graph.weigh(link -> cents.get(link.item().number()));
      List<Bridge> found = graph.lightest(from, to, fromPipe, toPipe, weights, most);

      List<Integer> foundCents =
          found.stream()
              .map(b -> b.links().stream().mapToInt(l -> cents.get(l.item().number())).sum())
              .toList();
      assertThat(foundCents)
          .as("seed %d: %s to %s", seed, from, to)
          .isEqualTo(allCents.subList(0, Math.min(most, allCents.size())));
      assertThat(found).as("seed %d", seed).doesNotHaveDuplicates();
      Set<List<String>> paths = new HashSet<>(all);
      assertThat(found)
          .as("seed %d", seed)
          .allMatch(b -> paths.contains(b.links().stream().map(BridgeGraphTest::step).toList()));
      bridged += all.isEmpty() ? 0 : 1;
    }
    assertThat(bridged).isGreaterThan(250);
  }

  /** Every bridge is found when as many are asked for as there are, like ones told apart. */
  @Test
  void every_bridge_is_found_once_when_all_cost_nothing() {
    for (int seed = 0; seed < 100; seed++) {
      Random random = new Random(seed);
      List<Item> adapters = adapters(random);
      End from = pick(random);
      End to = pick(random);
      BridgeGraph graph = new BridgeGraph(adapters);
      List<List<String>> found =
          graph.lightest(from, to, true, true, graph.weigh(link -> 0), Integer.MAX_VALUE).stream()
              .map(bridge -> bridge.links().stream().map(BridgeGraphTest::step).toList())
              .toList();
      assertThat(found)
          .as("seed %d", seed)
          .containsExactlyInAnyOrderElementsOf(allPaths(adapters, from, to, true, true));
    }
  }

  @Test
  void no_bridge_is_longer_than_three_adapters() {
    SmallShop shop = new SmallShop();
    shop.part("A", ItemKind.ADAPTER, "2.5 NH female swivel", "2 NPSH male").at(100);
    shop.part("B", ItemKind.ADAPTER, "2 NPSH female swivel", "1.5 NPSH male").at(100);
    shop.part("C", ItemKind.ADAPTER, "1.5 NPSH female swivel", "1.5 NH male").at(100);
    shop.part("D", ItemKind.ADAPTER, "1.5 NH female swivel", "1 NH male").at(100);
    BridgeGraph graph = new BridgeGraph(shop.items());
    End hydrant = End.parse("2.5 NH male");
    assertThat(
            graph.lightest(
                hydrant, End.parse("1.5 NH female"), false, false, graph.weigh(link -> 1), 9))
        .hasSize(1);
    assertThat(
            graph.lightest(
                hydrant, End.parse("1 NH female"), false, false, graph.weigh(link -> 1), 9))
        .isEmpty();
  }

  @Test
  void a_permanent_joint_stands_only_at_a_pipe() {
    SmallShop shop = new SmallShop();
    shop.part("A", ItemKind.ADAPTER, "1.5 NPT female", "1.5 NH male").at(100);
    shop.part("B", ItemKind.ADAPTER, "1.5 NH female swivel", "1.5 NPT male").at(100);
    BridgeGraph graph = new BridgeGraph(shop.items());
    End pipe = End.parse("1.5 NPT male");
    End hose = End.parse("1.5 NH female");
    assertThat(graph.lightest(pipe, hose, true, false, graph.weigh(link -> 1), 9)).hasSize(1);
    assertThat(graph.lightest(pipe, hose, false, false, graph.weigh(link -> 1), 9)).isEmpty();
    // B's pipe thread into A's would be a permanent joint in the middle of the chain.
    assertThat(
            graph.lightest(End.parse("1.5 NH male"), hose, true, true, graph.weigh(link -> 1), 9))
        .containsExactly(new Bridge(List.of()));
  }

  /** A few adapters, some of them alike in their ends. */
  private static List<Item> adapters(Random random) {
    SmallShop shop = new SmallShop();
    int count = 1 + random.nextInt(7);
    for (int i = 0; i < count; i++) {
      String first = ENDS.get(random.nextInt(ENDS.size()));
      String second = ENDS.get(random.nextInt(ENDS.size()));
      shop.part("A" + i, ItemKind.ADAPTER, first, second).at(100);
      if (random.nextInt(4) == 0) {
        shop.part("A" + i + "-like", ItemKind.ADAPTER, first, second).at(100);
      }
    }
    return shop.items();
  }

  private static End pick(Random random) {
    return End.parse(ENDS.get(random.nextInt(ENDS.size())));
  }

  private static String step(Bridge.Link link) {
    return link.item().number() + " " + link.upstream() + " > " + link.downstream();
  }

  private static String number(String step) {
    return step.substring(0, step.indexOf(' '));
  }

  /**
   * Every chain of at most three adapters, as steps, by walking all paths of a graph whose vertices
   * are adapters turned one way and whose edges are joints between them.
   */
  private static List<List<String>> allPaths(
      List<Item> adapters, End from, End to, boolean fromPipe, boolean toPipe) {
    // Three copies of each, because a chain may hold the same adapter more than once.
    DirectedMultigraph<String, Object> graph = new DirectedMultigraph<>(null, Object::new, false);
    graph.addVertex("start");
    graph.addVertex("goal");
    if (joins(from, to, fromPipe || toPipe)) {
      graph.addEdge("start", "goal");
    }
    Set<Bridge.Link> turned = new HashSet<>();
    for (Item adapter : adapters) {
      turned.add(new Bridge.Link(adapter, adapter.ends().get(0), adapter.ends().get(1)));
      turned.add(new Bridge.Link(adapter, adapter.ends().get(1), adapter.ends().get(0)));
    }
    for (int place = 1; place <= 3; place++) {
      for (Bridge.Link link : turned) {
        graph.addVertex(place + step(link));
        if (place == 1 && joins(from, link.upstream(), fromPipe)) {
          graph.addEdge("start", place + step(link));
        }
        if (joins(link.downstream(), to, toPipe)) {
          graph.addEdge(place + step(link), "goal");
        }
        for (Bridge.Link before : turned) {
          if (place > 1 && joins(before.downstream(), link.upstream(), false)) {
            graph.addEdge((place - 1) + step(before), place + step(link));
          }
        }
      }
    }
    List<List<String>> paths = new ArrayList<>();
    new AllDirectedPaths<>(graph)
        .getAllPaths("start", "goal", true, 4)
        .forEach(
            path -> {
              List<String> vertices = path.getVertexList();
              paths.add(
                  vertices.subList(1, vertices.size() - 1).stream()
                      .map(vertex -> vertex.substring(1))
                      .toList());
            });
    return paths;
  }

  private static boolean joins(End a, End b, boolean permanentAllowed) {
    Verdict verdict = Mating.of(a, b);
    return verdict.mates() && (permanentAllowed || verdict.removable());
  }
}
