package slabwright.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slabwright.site.Site;

/** A process that saves without a pause is killed; what it said was saved is on disk, and whole. */
class KilledWhileSavingTest {
  private static final int FEW = 2;
  private static final int MANY = 200;
  private static final int LONGEST_NANOS = 30_000_000;

  @TempDir Path folder;

  @Test
  void a_plan_is_whole_after_a_kill() throws IOException, InterruptedException {
    kill(FEW, new Random(3));
  }

  @Test
  @Tag("long")
  void a_plan_is_whole_after_each_of_two_hundred_kills() throws IOException, InterruptedException {
    kill(MANY, new Random(4));
  }

  private void kill(int times, Random random) throws IOException, InterruptedException {
    Path plan = folder.resolve("plan.site.json");
    for (int i = 0; i < times; i++) {
      int said = killed(plan, 1 + random.nextInt(40), random.nextInt(LONGEST_NANOS));
      assertThat(number(PlanFile.parse(Files.readString(plan)).orThrow()))
          .as("the state on disk after state %d was said to be saved", said)
          .isBetween(said, said + 1);
      assertThat(Journal.beside(plan).recover().map(KilledWhileSavingTest::number).orElse(0))
          .as("the journal's state")
          .isBetween(said, said + 2);
      Journal.beside(plan).clear();
      AtomicFile.clearUp(plan);
      try (var left = Files.list(folder)) {
        assertThat(left).as("what lies there once cleared up").containsExactly(plan);
      }
    }
  }

  private static int number(Site site) {
    return Integer.parseInt(site.note().replace("state ", ""));
  }

  /** The last state said to be saved by a process that is killed somewhere after so many. */
  private static int killed(Path plan, int states, int nanosLater)
      throws IOException, InterruptedException {
    Process saving =
        new ProcessBuilder(
                ProcessHandle.current().info().command().orElse("java"),
                "-XX:TieredStopAtLevel=1",
                "-cp",
                System.getProperty("java.class.path"),
                SavingProcess.class.getName(),
                plan.toString())
            .redirectError(ProcessBuilder.Redirect.DISCARD)
            .start();
    int last = 0;
    try (BufferedReader out = saving.inputReader(StandardCharsets.UTF_8)) {
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        last = Integer.parseInt(line);
        if (last >= states) {
          break;
        }
      }
      long until = System.nanoTime() + nanosLater;
      while (System.nanoTime() < until) {
        Thread.onSpinWait();
      }
      // Through its handle: what it had already said can then still be read.
      saving.toHandle().destroyForcibly();
      for (String line = out.readLine(); line != null; line = out.readLine()) {
        last = Integer.parseInt(line);
      }
    }
    assertThat(saving.waitFor(20, TimeUnit.SECONDS)).as("the process has ended").isTrue();
    assertThat(last)
        .as("what it had saved by itself when it was killed")
        .isGreaterThanOrEqualTo(states);
    return last;
  }
}
