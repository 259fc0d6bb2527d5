package slabwright.desk;

import java.io.IOException;
import java.io.OutputStream;
import java.io.PrintWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeoutException;
import slabwright.cli.SlabwrightCommand;

/**
 * What the image's class-data archive is made for: a whole job, then the desk's start page and the
 * same plan in it, in a window without a display. Run by the build, which lists what is loaded
 * meanwhile.
 */
final class ClassListRun {
  private ClassListRun() {}

  /**
   * Runs both and ends the virtual machine.
   *
   * @param args a plan, and a folder for what is made
   */
  public static void main(String[] args) throws IOException, TimeoutException {
    Path plan = Path.of(args[0]).toAbsolutePath();
    Path out = Path.of(args[1]).toAbsolutePath();
    PrintWriter quiet =
        new PrintWriter(OutputStream.nullOutputStream(), true, StandardCharsets.UTF_8);
    PrintWriter err = new PrintWriter(System.err, true, StandardCharsets.UTF_8);
    int code = SlabwrightCommand.run(quiet, err, "job", plan.toString(), "--out", out.toString());
    if (code == 0) {
      Files.createDirectories(out.resolve("data"));
      try (DeskUnderTest desk = DeskUnderTest.open(out.resolve("data"), 1440, 900, List.of())) {
        DeskUnderTest.on(
            () -> {
              desk.room().plans().openPlan(plan);
              return null;
            });
        desk.settleAll();
      }
    }
    Runtime.getRuntime().exit(code);
  }
}
