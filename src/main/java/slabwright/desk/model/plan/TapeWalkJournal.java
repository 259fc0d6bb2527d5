package slabwright.desk.model.plan;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.model.Desk;
import slabwright.shape.Vec;
import slabwright.store.AtomicFile;
import slabwright.units.Length;
import slabwright.units.Message;

/** Keeps an unfinished walk on disk, wall by wall, so that a crash loses none of it. */
public final class TapeWalkJournal {
  private static final String NAME = "unfinished-walk.txt";

  private final Desk desk;
  private final Supplier<Optional<Path>> plan;

  public TapeWalkJournal(Desk desk, Supplier<Optional<Path>> plan) {
    this.desk = desk;
    this.plan = plan;
  }

  private Optional<Path> file() {
    return plan.get().map(p -> p.toAbsolutePath().resolveSibling(NAME));
  }

  /** Writes the walk as it is; a walk without walls leaves nothing. */
  public void keep(TapeWalk walk) {
    Optional<Path> file = file();
    if (file.isEmpty()) {
      return;
    }
    try {
      if (walk.walls().isEmpty()) {
        Files.deleteIfExists(file.get());
        return;
      }
      StringBuilder text = new StringBuilder();
      for (TapeWalk.Wall w : walk.walls()) {
        text.append(w.turn()).append('\t').append(w.length()).append('\n');
      }
      AtomicFile.write(file.get(), text.toString().getBytes(StandardCharsets.UTF_8));
    } catch (IOException e) {
      desk.refuse(Message.of("desk.model.tape-walk.not-kept", String.valueOf(e.getMessage())));
    }
  }

  /** The walk left behind, from the start given; one without walls when there is none. */
  public TapeWalk left(Vec start) {
    List<TapeWalk.Wall> walls = new ArrayList<>();
    if (file().filter(Files::isReadable).isPresent()) {
      try {
        for (String line : Files.readAllLines(file().get())) {
          List<String> parts = List.of(line.split("\t", 2));
          walls.add(
              new TapeWalk.Wall(
                  Length.parse(parts.get(1)).orThrow(), Double.parseDouble(parts.get(0))));
        }
      } catch (IOException | IllegalArgumentException | IndexOutOfBoundsException e) {
        desk.refuse(Message.of("desk.model.tape-walk.unreadable"));
        return TapeWalk.from(start);
      }
    }
    return new TapeWalk(start, walls);
  }
}
