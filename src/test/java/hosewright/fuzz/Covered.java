package hosewright.fuzz;

import java.io.IOException;
import java.io.InputStream;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.util.BitSet;
import java.util.HashMap;
import java.util.Map;
import org.jacoco.core.data.ExecutionData;
import org.jacoco.core.data.ExecutionDataStore;
import org.jacoco.core.data.SessionInfoStore;
import org.jacoco.core.instr.Instrumenter;
import org.jacoco.core.runtime.RuntimeData;
import org.jacoco.core.runtime.SystemPropertiesRuntime;

/**
 * A method of this program that takes a text, loaded anew so that it tells which branches it takes.
 */
final class Covered {
  private static final String OURS = "hosewright.";

  private final RuntimeData taken = new RuntimeData();
  private final Map<Long, BitSet> seen = new HashMap<>();
  private final Method method;

  Covered(Class<?> type, String name) {
    SystemPropertiesRuntime runtime = new SystemPropertiesRuntime();
    try {
      runtime.startup(taken);
      method =
          new Counting(new Instrumenter(runtime))
              .loadClass(type.getName())
              .getMethod(name, String.class);
    } catch (Exception e) {
      throw new IllegalStateException(e);
    }
  }

  /** What the method throws on a text; null when it takes it. */
  Throwable call(String text) {
    try {
      method.invoke(null, text);
      return null;
    } catch (InvocationTargetException e) {
      return e.getCause();
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(e);
    }
  }

  /** Whether the calls since this was last asked went where none went before. */
  boolean foundNew() {
    ExecutionDataStore store = new ExecutionDataStore();
    taken.collect(store, new SessionInfoStore(), false);
    boolean found = false;
    for (ExecutionData data : store.getContents()) {
      BitSet known = seen.computeIfAbsent(data.getId(), unknown -> new BitSet());
      boolean[] probes = data.getProbes();
      for (int i = 0; i < probes.length; i++) {
        if (probes[i] && !known.get(i)) {
          known.set(i);
          found = true;
        }
      }
    }
    taken.reset();
    return found;
  }

  int placesReached() {
    return seen.values().stream().mapToInt(BitSet::cardinality).sum();
  }

  /** Loads our classes with counters in them, all others as usual. */
  private static final class Counting extends ClassLoader {
    private final Instrumenter instrumenter;

    Counting(Instrumenter instrumenter) {
      super(Covered.class.getClassLoader());
      this.instrumenter = instrumenter;
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
      if (!name.startsWith(OURS)) {
        return super.loadClass(name, resolve);
      }
      synchronized (getClassLoadingLock(name)) {
        Class<?> loaded = findLoadedClass(name);
        return loaded == null ? counted(name) : loaded;
      }
    }

    private Class<?> counted(String name) throws ClassNotFoundException {
      try (InputStream in = getResourceAsStream(name.replace('.', '/') + ".class")) {
        if (in == null) {
          throw new ClassNotFoundException(name);
        }
        byte[] counted = instrumenter.instrument(in, name);
        return defineClass(name, counted, 0, counted.length);
      } catch (IOException e) {
        throw new ClassNotFoundException(name, e);
      }
    }
  }
}
