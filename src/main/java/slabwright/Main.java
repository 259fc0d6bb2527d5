package slabwright;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import slabwright.cli.SlabwrightCommand;
import slabwright.desk.DeskLauncher;

/** The one way in: with nothing or a plan to open the desk, with a command the command line. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    if (isForDesk(args)) {
      DeskLauncher.open(args);
      return;
    }
    System.setProperty("java.awt.headless", "true");
    PrintWriter out = new PrintWriter(System.out, true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int code = SlabwrightCommand.run(out, err, args);
    if (code != 0) {
      System.exit(code);
    }
  }

  /** A plan by itself is what a double click on its file gives. */
  static boolean isForDesk(String... args) {
    return args.length == 0 || (args.length == 1 && args[0].endsWith(".site.json"));
  }
}
