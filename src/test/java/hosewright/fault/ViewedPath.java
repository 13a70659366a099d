package hosewright.fault;

import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.Method;
import java.lang.reflect.Proxy;
import java.nio.file.FileSystem;
import java.nio.file.Path;
import java.util.Arrays;

/** A real path that says of itself that it lies in another file system, and so do its relatives. */
final class ViewedPath {
  private final Path real;
  private final FileSystem files;

  private ViewedPath(Path real, FileSystem files) {
    this.real = real;
    this.files = files;
  }

  static Path of(Path real, FileSystem files) {
    return (Path)
        Proxy.newProxyInstance(
            ViewedPath.class.getClassLoader(),
            new Class<?>[] {Path.class},
            (proxy, method, given) -> new ViewedPath(real, files).answer(method, given));
  }

  /** The path it is a view of, or the path itself. */
  static Path real(Path path) {
    return Proxy.isProxyClass(path.getClass()) ? Path.of(path.toString()) : path;
  }

  private Object answer(Method method, Object[] given) throws Throwable {
    if (method.getName().equals("getFileSystem")) {
      return files;
    }
    Object[] plain =
        given == null
            ? new Object[0]
            : Arrays.stream(given).map(one -> one instanceof Path p ? real(p) : one).toArray();
    try {
      Object answer = method.invoke(real, plain);
      return answer instanceof Path path ? of(path, files) : answer;
    } catch (InvocationTargetException e) {
      throw e.getCause();
    }
  }
}
