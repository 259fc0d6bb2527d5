package slabwright.project.plan;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import slabwright.shape.Vec;
import slabwright.store.AtomicFile;
import slabwright.tape.TapeWalk;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * A room half taped, beside the plan, so that a crash loses none of it: a line for each wall with
 * its turn in degrees and its length as typed.
 *
 * @param plan the plan's file
 */
public record UnfinishedWalkFile(Path plan) {
  private Path file() {
    return plan.toAbsolutePath().resolveSibling("unfinished-walk.txt");
  }

  /**
   * Writes a walk as it is soon; one without walls leaves nothing.
   *
   * @param fault told why it can't be written
   */
  public void write(TapeWalk walk, BackgroundWriter writer, Consumer<Message> fault) {
    writer.write(
        this,
        () -> {
          write(walk);
          return walk;
        },
        w -> {},
        why -> fault.accept(Message.of("project.plan.walk-not-kept", why)));
  }

  private void write(TapeWalk walk) throws IOException {
    if (walk.walls().isEmpty()) {
      Files.deleteIfExists(file());
      return;
    }
    StringBuilder text = new StringBuilder();
    for (TapeWalk.Wall w : walk.walls()) {
      text.append(w.turn()).append('\t').append(w.length()).append('\n');
    }
    AtomicFile.write(file(), text.toString().getBytes(StandardCharsets.UTF_8));
  }

  /** The walk left behind, from the start given; one without walls when there is none. */
  public Result<TapeWalk> read(Vec start) {
    if (!Files.isReadable(file())) {
      return Result.ok(TapeWalk.from(start));
    }
    try {
      List<TapeWalk.Wall> walls = new ArrayList<>();
      for (String line : Files.readAllLines(file())) {
        List<String> parts = List.of(line.split("\t", 2));
        walls.add(
            new TapeWalk.Wall(
                Length.parse(parts.get(1)).orThrow(), Double.parseDouble(parts.get(0))));
      }
      return Result.ok(new TapeWalk(start, walls));
    } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException e) {
      return Result.refused(Message.of("project.plan.walk-unreadable"));
    }
  }
}
