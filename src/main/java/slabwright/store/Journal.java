package slabwright.store;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import slabwright.site.Site;
import slabwright.units.Result;

/**
 * The state of an open plan since it was last saved, on disk after every edit, so that a crash
 * loses at most the edit under way. One small file, written whole each time; it is gone after a
 * save.
 */
public record Journal(Path file) {
  private static final String ENDING = ".journal";

  /** The journal of a saved plan: a hidden file beside it. */
  public static Journal beside(Path plan) {
    Path full = plan.toAbsolutePath();
    return new Journal(full.resolveSibling("." + full.getFileName() + ENDING));
  }

  /** The journal of a plan that has no file yet, in the person's data folder. */
  public static Journal untitled(Path dataFolder, String key) {
    return new Journal(dataFolder.resolve("untitled-" + key + ENDING));
  }

  /**
   * The journal of one of several windows on the same plan.
   *
   * @param window from 1; the first one's is this
   */
  public Journal numbered(int window) {
    return window == 1 ? this : new Journal(sibling("." + window + ENDING));
  }

  /** The file that says, by a lock on it, that a window writes this journal. */
  public Path lock() {
    return sibling(".lock");
  }

  /** The file that keeps a room half taped in the window that writes this journal. */
  public Path walk() {
    return sibling(".walk");
  }

  private Path sibling(String ending) {
    return file.resolveSibling(stem() + ending);
  }

  private String stem() {
    String name = file.getFileName().toString();
    return name.substring(0, name.length() - ENDING.length());
  }

  /**
   * Records a state.
   *
   * @throws IOException when the folder cannot be written to
   */
  public void write(Site site) throws IOException {
    AtomicFile.write(file, PlanFile.write(site).getBytes(StandardCharsets.UTF_8));
  }

  /**
   * The state left behind by a process that never saved it.
   *
   * @throws IOException when a journal is there and cannot be read
   */
  public Optional<Site> recover() throws IOException {
    if (!Files.isRegularFile(file)) {
      return Optional.empty();
    }
    Result<Site> reading = PlanFile.parse(Files.readString(file));
    return reading instanceof Result.Ok<Site> good ? Optional.of(good.value()) : Optional.empty();
  }

  /**
   * Forgets the journal, after a save; and what a kill in the middle of a write left beside it.
   *
   * @throws IOException when it cannot be removed
   */
  public void clear() throws IOException {
    Files.deleteIfExists(file);
    AtomicFile.clearUp(file);
  }
}
