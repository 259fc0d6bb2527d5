package slabwright.fuzz;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Fuzzes in a process of its own, whose memory is bounded: KIND FIRST-SEED COUNT. */
final class FuzzProcess {
  private FuzzProcess() {}

  public static void main(String[] args) throws IOException, InterruptedException {
    FuzzKind kind = FuzzKind.valueOf(args[0]);
    Path scratch = Files.createTempDirectory("fuzz");
    FuzzRun run = new FuzzRun(kind.target(scratch));
    var failures = run.failures(Long.parseLong(args[1]), Integer.parseInt(args[2]));
    failures.forEach(f -> System.out.println(kind + " " + f));
    System.out.println("done");
    System.exit(failures.isEmpty() ? 0 : 1);
  }
}
