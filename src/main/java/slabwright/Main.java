package slabwright;

import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import slabwright.cli.SlabwrightCommand;
import slabwright.desk.DeskLauncher;

/** The one way in: with arguments the command line, without them the desk. */
public final class Main {
  private Main() {}

  public static void main(String[] args) {
    if (args.length == 0) {
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
}
