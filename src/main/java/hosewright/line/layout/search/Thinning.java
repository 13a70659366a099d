package hosewright.line.layout.search;

import hosewright.line.layout.search.Ample.Enough;
import java.util.Collections;
import java.util.Comparator;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Set;
import java.util.function.Function;

/** Leaves out ways of building a part of a layout that need not be looked at further. */
interface Thinning {

  /**
   * @param legs the legs that the part is made of, by name
   * @param enough what is ample where the part begins
   */
  <T> List<T> of(List<T> all, Function<T, Sum> sum, Set<String> legs, Enough enough);

  /** Keeps so many of the cheapest, and of those that need least. */
  static Thinning toAFew(int width) {
    return new Thinning() {
      @Override
      public <T> List<T> of(List<T> all, Function<T, Sum> sum, Set<String> legs, Enough enough) {
        if (all.size() <= width) {
          return all;
        }
        Set<T> few = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Comparator<Sum> first : List.of(Sum.CHEAPEST_FIRST, Sum.LEAST_NEED_FIRST)) {
          all.stream().sorted(Comparator.comparing(sum, first)).limit(width).forEach(few::add);
        }
        return all.stream().filter(few::contains).toList();
      }
    };
  }
}
