package hosewright.line.model;

/**
 * Where legs begin, meet or end: the source, a split, a join, an appliance.
 *
 * @param name what legs call it
 * @param part what stands there
 * @param count how many like it stand side by side
 */
public record Node(String name, Part part, int count) {

  public Role role() {
    return part.role();
  }
}
