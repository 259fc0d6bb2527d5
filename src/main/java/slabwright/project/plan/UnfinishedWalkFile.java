package slabwright.project.plan;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import slabwright.shape.Vec;
import slabwright.store.AtomicFile;
import slabwright.store.Journal;
import slabwright.tape.TapeWalk;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * A room half taped, beside the plan, so that a crash loses none of it: a line for each wall with
 * its turn in degrees and its length as typed. Each window has a file of its own, as it has a
 * journal.
 *
 * @param at the plan
 * @param window number of its journal
 */
public record UnfinishedWalkFile(PlanLocation at, int window) {
  /** What it was called before each window had its own. */
  private static final String EARLIER = "unfinished-walk.txt";

  private Path file() {
    return at.journal().numbered(window).walk();
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

  /**
   * The walk left behind, from the start given: this window's, else one of a window that is gone,
   * which is this window's from now on; one without walls when there is none.
   */
  public Result<TapeWalk> read(Vec start) {
    try {
      Optional<Path> left = Optional.of(file()).filter(Files::isReadable).or(this::orphan);
      if (left.isEmpty()) {
        return Result.ok(TapeWalk.from(start));
      }
      TapeWalk walk = read(left.get(), start);
      if (!left.get().equals(file())) {
        Files.move(left.get(), file());
      }
      return Result.ok(walk);
    } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException e) {
      return Result.refused(Message.of("project.plan.walk-unreadable"));
    }
  }

  /** The file of a window that is gone. */
  private Optional<Path> orphan() {
    Stream<Path> others =
        PlanHold.numbers()
            .filter(n -> n != window)
            .mapToObj(at.journal()::numbered)
            .filter(j -> !PlanHold.isHeld(j))
            .map(Journal::walk);
    return Stream.concat(others, Stream.of(at.folder().resolve(EARLIER)))
        .filter(Files::isReadable)
        .findFirst();
  }

  private static TapeWalk read(Path file, Vec start) throws IOException {
    List<TapeWalk.Wall> walls = new ArrayList<>();
    for (String line : Files.readAllLines(file)) {
      List<String> parts = List.of(line.split("\t", 2));
      walls.add(
          new TapeWalk.Wall(
              Length.parse(parts.get(1)).orThrow(), Double.parseDouble(parts.get(0))));
    }
    return new TapeWalk(start, walls);
  }
}
