package slabwright.desk;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.project.plan.PlanFiles;
import slabwright.site.FloorArea;
import slabwright.site.Site;

/** A desk in a process of its own is killed; what it had done is there at the next start. */
class KillTest {
  private static final List<String> PASSED_ON =
      List.of(
          "java.awt.headless",
          "testfx.robot",
          "testfx.headless",
          "prism.order",
          "headless.geometry");

  @TempDir Path data;

  @ParameterizedTest
  @ValueSource(ints = {7})
  void at_most_the_last_edit_is_missing_after_a_kill(int edits)
      throws IOException, TimeoutException, InterruptedException {
    killAndRecover(edits);
  }

  @ParameterizedTest
  @Tag("long")
  @ValueSource(ints = {1, 2, 3, 5, 9, 14, 23, 31, 40, 52, 77, 110, 150})
  void at_most_the_last_edit_is_missing_after_any_of_many_kills(int edits)
      throws IOException, TimeoutException, InterruptedException {
    killAndRecover(edits);
  }

  private void killAndRecover(int edits)
      throws IOException, TimeoutException, InterruptedException {
    Path plan = TestSites.shed(data);
    int said = killedAfter(edits, plan);
    try (DeskUnderTest desk = DeskUnderTest.open(data, 1280, 800, List.of())) {
      assertThat(DeskUnderTest.on(() -> desk.room().parts().plans().found().orElseThrow().left()))
          .extracting(PlanFiles.LeftPlan::plan)
          .containsExactly(plan);
      Site back = recovered(desk, plan);
      FloorArea area = back.areas().get(0);
      assertThat(area.marks()).hasSizeBetween(said - 1, said + 1);
      DeskUnderTest.on(() -> desk.room().parts().keeper().save());
      desk.settle();
    }
    assertThat(hidden(data)).as("journals and parts of them once saved").isEmpty();
  }

  private static Site recovered(DeskUnderTest desk, Path plan) throws TimeoutException {
    DeskUnderTest.on(
        () -> {
          desk.room().plans().recover(plan);
          return null;
        });
    desk.settle();
    return DeskUnderTest.on(() -> desk.room().bench().desk().site());
  }

  /** How many edits the process had said to have done when it was killed. */
  private int killedAfter(int edits, Path plan) throws IOException, InterruptedException {
    Process desk = new ProcessBuilder(command(plan)).redirectErrorStream(true).start();
    int said = 0;
    try (BufferedReader out = desk.inputReader(StandardCharsets.UTF_8)) {
      String line = out.readLine();
      while (line != null && said < edits) {
        said += line.startsWith("set ") ? 1 : 0;
        line = said < edits ? out.readLine() : line;
      }
      // Through its handle: what it had already said can then still be read.
      desk.toHandle().destroyForcibly();
      for (String rest = out.readLine(); rest != null; rest = out.readLine()) {
        said += rest.startsWith("set ") ? 1 : 0;
      }
    } finally {
      desk.destroyForcibly();
    }
    assertThat(desk.waitFor(20, TimeUnit.SECONDS)).as("the process has ended").isTrue();
    assertThat(said).as("edits said to be done").isGreaterThanOrEqualTo(edits);
    return said;
  }

  private List<String> command(Path plan) {
    List<String> words = new ArrayList<>();
    words.add(ProcessHandle.current().info().command().orElse("java"));
    words.add("-XX:TieredStopAtLevel=1");
    for (String name : PASSED_ON) {
      words.add("-D" + name + "=" + System.getProperty(name));
    }
    words.addAll(List.of("-cp", System.getProperty("java.class.path")));
    words.addAll(List.of(KilledDesk.class.getName(), data.toString(), plan.toString()));
    return words;
  }

  private static List<String> hidden(Path folder) throws IOException {
    try (var all = Files.list(folder)) {
      return all.map(p -> p.getFileName().toString()).filter(n -> n.startsWith(".")).toList();
    }
  }
}
