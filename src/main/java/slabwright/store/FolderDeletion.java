package slabwright.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.stream.Stream;

/** Takes away a folder that this program made, with all in it. Links are removed, not followed. */
public final class FolderDeletion {
  private FolderDeletion() {}

  /**
   * Deletes a folder if it is there.
   *
   * @throws IOException when something in it cannot be removed
   */
  public static void delete(Path folder) throws IOException {
    if (!Files.exists(folder)) {
      return;
    }
    try (Stream<Path> all = Files.walk(folder)) {
      for (Path p : all.sorted(Comparator.reverseOrder()).toList()) {
        Files.delete(p);
      }
    }
  }
}
