package hosewright.store.database;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.io.UncheckedIOException;
import java.net.InetAddress;
import java.net.ServerSocket;
import java.net.Socket;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.atomic.AtomicInteger;

/** A way to a server that breaks after so many messages to it, on the loopback address. */
public final class CutLine implements AutoCloseable {
  private final PostgresCluster cluster;
  private final ServerSocket door;
  private final int messages;
  private final AtomicInteger sent = new AtomicInteger();
  private final List<Socket> open = new ArrayList<>();

  /**
   * @param messages how many get through; what follows meets with a closed door
   */
  public CutLine(PostgresCluster cluster, int messages) {
    this.cluster = cluster;
    this.messages = messages;
    try {
      door = new ServerSocket(0, 50, InetAddress.getLoopbackAddress());
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    started("line to a server", this::accept);
  }

  /** What a user's environment says to work with a database over this line. */
  public Map<String, String> environment(String database) {
    Map<String, String> environment = new HashMap<>(cluster.environment(database));
    environment.replaceAll(
        (name, value) ->
            value.replace(":" + cluster.port() + "/", ":" + door.getLocalPort() + "/"));
    return environment;
  }

  /** How many messages went to the server. */
  public int sent() {
    return sent.get();
  }

  private void accept() {
    try {
      while (true) {
        Socket here = door.accept();
        Socket there = new Socket(InetAddress.getLoopbackAddress(), cluster.port());
        synchronized (open) {
          open.add(here);
          open.add(there);
        }
        started("to the server", () -> pass(here, there, true));
        started("from the server", () -> pass(there, here, false));
      }
    } catch (IOException e) {
      // Closed: the line is cut, or the test is over.
    }
  }

  private void pass(Socket from, Socket to, boolean counted) {
    byte[] bytes = new byte[1 << 16];
    try (from;
        to) {
      InputStream in = from.getInputStream();
      OutputStream out = to.getOutputStream();
      for (int length = in.read(bytes); length >= 0; length = in.read(bytes)) {
        if (counted && sent.incrementAndGet() > messages) {
          close();
          return;
        }
        out.write(bytes, 0, length);
      }
    } catch (IOException e) {
      // The other end is gone.
    }
  }

  private static void started(String name, Runnable work) {
    Thread thread = new Thread(work, name);
    thread.setDaemon(true);
    thread.start();
  }

  @Override
  public void close() {
    try {
      door.close();
      synchronized (open) {
        for (Socket one : open) {
          one.close();
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
