package slabwright.project.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slabwright.shape.Vec;
import slabwright.tape.TapeWalk;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.words.Words;

class UnfinishedWalkFileTest {
  private static final Vec START = new Vec(100, 200);

  @TempDir Path folder;

  private PlanLocation plan;
  private UnfinishedWalkFile file;

  @BeforeEach
  void plan() {
    plan = PlanLocation.file(folder.resolve("shed.site.json"));
    file = new UnfinishedWalkFile(plan, 1);
  }

  private static TapeWalk walk() {
    return TapeWalk.from(START)
        .with(new TapeWalk.Wall(Length.parse("24' 6 1/2\"").orThrow(), 0))
        .with(new TapeWalk.Wall(Length.parse("7.47 m").orThrow(), -90));
  }

  private void write(TapeWalk walk) {
    write(walk, file);
  }

  private static void write(TapeWalk walk, UnfinishedWalkFile to) {
    List<Message> told = new CopyOnWriteArrayList<>();
    try (BackgroundWriter writer = new BackgroundWriter("test", Runnable::run)) {
      to.write(walk, writer, told::add);
    }
    assertThat(told).isEmpty();
  }

  @Test
  void a_walk_comes_back_with_its_lengths_as_typed() {
    write(walk());
    assertThat(file.read(START)).isEqualTo(Result.ok(walk()));
  }

  @Test
  void where_none_was_left_it_begins_anew() {
    assertThat(file.read(START)).isEqualTo(Result.ok(TapeWalk.from(START)));
  }

  @Test
  void a_walk_without_walls_leaves_nothing() {
    write(walk());
    write(TapeWalk.from(START));
    assertThat(folder).isEmptyDirectory();
  }

  @ParameterizedTest
  @ValueSource(strings = {"-90", "left\t3 m", "-90\t3 parsecs"})
  void what_cannot_be_read_is_left_alone(String line) throws IOException {
    Path walk = Files.writeString(folder.resolve(".shed.site.json.walk"), line);
    Result<TapeWalk> read = file.read(START);
    assertThat(Words.english().say(((Result.Refused<TapeWalk>) read).message()))
        .isEqualTo("The unfinished walk on disk cannot be read; it was left alone.");
    assertThat(walk).hasContent(line);
  }

  @Test
  void each_window_has_a_walk_of_its_own_and_takes_over_that_of_one_that_is_gone()
      throws IOException {
    TapeWalk theirs =
        TapeWalk.from(START).with(new TapeWalk.Wall(Length.parse("4 m").orThrow(), 0));
    UnfinishedWalkFile second = new UnfinishedWalkFile(plan, 2);
    try (PlanHold first = PlanHold.take(plan, 1);
        PlanHold other = PlanHold.take(plan, 2)) {
      assertThat(List.of(first.number(), other.number())).containsExactly(1, 2);
      write(walk());
      assertThat(second.read(START)).isEqualTo(Result.ok(TapeWalk.from(START)));
      write(theirs, second);
      assertThat(file.read(START)).isEqualTo(Result.ok(walk()));
      write(TapeWalk.from(START));
      assertThat(file.read(START)).isEqualTo(Result.ok(TapeWalk.from(START)));
    }
    assertThat(file.read(START)).isEqualTo(Result.ok(theirs));
    assertThat(second.read(START)).isEqualTo(Result.ok(theirs));
    write(TapeWalk.from(START), second);
    assertThat(folder).isEmptyDirectory();
  }

  @Test
  void a_walk_under_the_name_of_earlier_days_comes_back() throws IOException {
    Files.writeString(folder.resolve("unfinished-walk.txt"), "0.0\t3 m\n");
    assertThat(file.read(START).orThrow().walls()).hasSize(1);
    assertThat(folder.resolve("unfinished-walk.txt")).doesNotExist();
    assertThat(file.read(START).orThrow().walls()).hasSize(1);
  }
}
