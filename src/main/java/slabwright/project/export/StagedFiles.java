package slabwright.project.export;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import slabwright.project.TaskProgress;
import slabwright.store.FolderDeletion;
import slabwright.units.PartFaults;

/**
 * Files that belong together. They are written into a hidden folder first and moved to their names
 * at the end, so that work that failed or was given up leaves nothing behind. A file of the same
 * name is replaced: names carry the site and its release.
 */
public final class StagedFiles implements FileSink {
  private final TreeMap<String, byte[]> files = new TreeMap<>();
  private final PartFaults faults = new PartFaults();

  /** Adds a file; parts of a job that are made side by side add theirs as they come. */
  @Override
  public synchronized void add(String name, byte[] bytes) {
    if (files.put(name, bytes) != null) {
      throw new IllegalArgumentException("two files of one name: " + name);
    }
  }

  /** The one file there is, under a name that the person gave it. */
  public StagedFiles onlyAs(String name) {
    StagedFiles one = new StagedFiles();
    files.values().forEach(bytes -> one.add(name, bytes));
    one.faults.addAll(faults.all());
    return one;
  }

  /** What belongs to them and could not be made. */
  public PartFaults faults() {
    return faults;
  }

  public List<String> names() {
    return List.copyOf(files.keySet());
  }

  /**
   * Writes all of them; tells the steps from {@code from} to 1.
   *
   * @return how many took the place of a file that was there
   * @throws IOException when the folder cannot be written to
   * @throws CancellationException when it was given up; once files are moved it no longer can be
   */
  public int write(Path folder, TaskProgress steps, double from) throws IOException {
    boolean made = !Files.exists(folder);
    Files.createDirectories(folder);
    Path staging = Files.createTempDirectory(folder, ".slabwright-");
    boolean moved = false;
    try {
      stage(staging, steps, from);
      int replaced = moveIn(staging, folder);
      moved = true;
      return replaced;
    } finally {
      FolderDeletion.delete(staging);
      if (made && !moved) {
        Files.deleteIfExists(folder);
      }
    }
  }

  private void stage(Path staging, TaskProgress steps, double from) throws IOException {
    int done = 0;
    for (Map.Entry<String, byte[]> e : files.entrySet()) {
      steps.report(from + (1 - from) * done / files.size());
      Path file = staging.resolve(e.getKey());
      Files.createDirectories(file.getParent());
      Files.write(file, e.getValue());
      done++;
    }
    steps.report(1);
  }

  private int moveIn(Path staging, Path folder) throws IOException {
    int replaced = 0;
    for (String name : files.keySet()) {
      Path to = folder.resolve(name);
      Files.createDirectories(to.getParent());
      replaced += Files.exists(to) ? 1 : 0;
      Files.move(staging.resolve(name), to, StandardCopyOption.REPLACE_EXISTING);
    }
    return replaced;
  }
}
