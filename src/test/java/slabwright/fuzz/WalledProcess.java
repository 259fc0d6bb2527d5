package slabwright.fuzz;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.Permission;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentSkipListSet;
import java.util.stream.Stream;
import slabwright.cli.SlabwrightCommand;

/**
 * Runs commands behind a wall that notes every connection asked for and every file read under a
 * folder that nobody named: FOLDER FORBIDDEN. In FOLDER lie graphics and plans.
 */
final class WalledProcess {
  private WalledProcess() {}

  /** Lets everything be, and notes what must not be. */
  @SuppressWarnings("removal")
  private static final class Wall extends SecurityManager {
    private final Set<String> broken = new ConcurrentSkipListSet<>();
    private final String forbidden;

    Wall(String forbidden) {
      this.forbidden = forbidden;
    }

    @Override
    public void checkPermission(Permission any) {
      // all else is allowed: only files and connections are looked at
    }

    @Override
    public void checkRead(String file) {
      if (Path.of(file).toAbsolutePath().normalize().startsWith(forbidden)) {
        broken.add("read " + file);
      }
    }

    @Override
    public void checkConnect(String host, int port) {
      if (port == -1 && isOwnName()) {
        return;
      }
      broken.add("connect " + host + ":" + port);
      throw new SecurityException("no network here");
    }
  }

  /** Java asks for this computer's own name when it looks up its fonts; nobody is called. */
  private static boolean isOwnName() {
    return StackWalker.getInstance()
        .walk(frames -> frames.anyMatch(f -> f.getMethodName().equals("getLocalHost")));
  }

  @SuppressWarnings("removal")
  public static void main(String[] args) throws IOException {
    Path folder = Path.of(args[0]);
    Wall wall = new Wall(Path.of(args[1]).toRealPath().toString());
    System.setSecurityManager(wall);
    List<Path> files;
    try (Stream<Path> all = Files.list(folder)) {
      files = all.sorted().toList();
    }
    for (Path file : files) {
      String name = file.getFileName().toString();
      Set<String> before = new TreeSet<>(wall.broken);
      int code = run(name.endsWith(".json") ? plan(file) : graphic(file));
      Set<String> now = new TreeSet<>(wall.broken);
      now.removeAll(before);
      System.out.println(name + " " + code + " " + now);
    }
  }

  private static String[] plan(Path file) {
    return new String[] {"check", file.toString()};
  }

  private static String[] graphic(Path file) {
    return new String[] {"inlay", file.toString(), "--width", "1 m", "--roll", "610 mm"};
  }

  private static int run(String... args) {
    StringWriter said = new StringWriter();
    int code = SlabwrightCommand.run(new PrintWriter(said), new PrintWriter(said), args);
    if (code == 1) {
      System.out.println(Arrays.toString(args) + " " + said);
    }
    return code;
  }
}
