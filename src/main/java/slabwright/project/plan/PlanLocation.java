package slabwright.project.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import slabwright.store.Journal;

/**
 * Where a plan lies.
 *
 * @param plan its file; of a plan that was never saved, what it would be
 * @param saved whether it has been saved there
 */
public record PlanLocation(Path plan, boolean saved) {
  private static final String UNTITLED = "plan";

  public static PlanLocation file(Path plan) {
    return new PlanLocation(plan, true);
  }

  /** A plan that was never saved has a folder of its own. */
  public static PlanLocation untitled(Path folder) {
    return new PlanLocation(folder.resolve("untitled.site.json"), false);
  }

  /** The folder that its graphics lie in. */
  public Path folder() {
    return plan.toAbsolutePath().getParent();
  }

  /** A saved plan's folder that is gone, as on a stick pulled out, is not made anew behind it. */
  void needFolder() throws IOException {
    if (saved && !Files.isDirectory(folder())) {
      throw new NoSuchFileException(folder().toString());
    }
  }

  /** Whether both have the same journal. */
  public boolean journalsWith(PlanLocation other) {
    return journal().equals(other.journal());
  }

  Journal journal() {
    return saved ? Journal.beside(plan) : Journal.untitled(folder(), UNTITLED);
  }
}
