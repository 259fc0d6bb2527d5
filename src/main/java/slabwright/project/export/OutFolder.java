package slabwright.project.export;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import slabwright.project.RefusedInput;
import slabwright.project.TaskProgress;
import slabwright.units.Message;

/**
 * Where a command writes: everything or nothing, as {@link StagedFiles} are. Of what is already
 * there only files named in our own manifest are ever replaced or removed; links are followed
 * before that is judged.
 */
public final class OutFolder implements FileSink {
  public static final String MANIFEST = "slabwright-files.txt";
  static final String HEADER = "# Written by Slabwright; only files named here are ever replaced.";

  private final Path target;
  private final StagedFiles files = new StagedFiles();

  public OutFolder(Path target) {
    this.target = target.toAbsolutePath().normalize();
  }

  /** Adds a file; {@code name} is made of cleaned ids and at most one folder. */
  @Override
  public void add(String name, byte[] bytes) {
    if (!name.matches("([A-Za-z0-9][A-Za-z0-9._-]*/)?[A-Za-z0-9][A-Za-z0-9._-]*")) {
      throw new IllegalArgumentException("not a clean file name: " + name);
    }
    files.add(name, bytes);
  }

  public List<String> names() {
    return files.names();
  }

  /** Writes everything or nothing. */
  public void commit() throws RefusedInput, IOException {
    Path real = realTarget();
    List<String> ours = manifest(real);
    refuseForeign(real, ours);
    files.write(real, TaskProgress.untold(), 0);
    List<String> made = files.names();
    for (String old : ours) {
      if (!made.contains(old) && !throughLink(real, real.resolve(old))) {
        Files.deleteIfExists(real.resolve(old));
      }
    }
    StagedFiles list = new StagedFiles();
    list.add(MANIFEST, HEADER + "\n" + String.join("\n", made) + "\n");
    list.write(real, TaskProgress.untold(), 0);
  }

  private Path realTarget() throws RefusedInput, IOException {
    if (Files.exists(target)) {
      if (!Files.isDirectory(target)) {
        throw RefusedInput.of(Message.of("project.out-folder.is-a-file", target.toString()));
      }
      return target.toRealPath();
    }
    if (Files.isSymbolicLink(target)) {
      throw RefusedInput.of(Message.of("project.out-folder.dead-link", target.toString()));
    }
    try {
      Files.createDirectories(target.getParent());
      return target.getParent().toRealPath().resolve(target.getFileName());
    } catch (IOException e) {
      throw RefusedInput.of(
          Message.of(
              "project.out-folder.cannot-be-made",
              target.toString(),
              String.valueOf(e.getMessage())));
    }
  }

  /** Whether the folder's manifest is one of ours and not a file that happens to have its name. */
  private static boolean hasManifest(Path folder) throws IOException {
    Path file = folder.resolve(MANIFEST);
    if (!Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS)) {
      return false;
    }
    try (Stream<String> lines = Files.lines(file, StandardCharsets.ISO_8859_1)) {
      return lines.findFirst().filter(HEADER::equals).isPresent();
    }
  }

  private static List<String> manifest(Path folder) throws IOException {
    if (!hasManifest(folder)) {
      return List.of();
    }
    return Files.readAllLines(folder.resolve(MANIFEST), StandardCharsets.ISO_8859_1).stream()
        .filter(l -> l.matches("([A-Za-z0-9][A-Za-z0-9._-]*/)?[A-Za-z0-9][A-Za-z0-9._-]*"))
        .toList();
  }

  private void refuseForeign(Path folder, List<String> ours) throws RefusedInput, IOException {
    List<Message> foreign = new ArrayList<>();
    List<String> wanted = new ArrayList<>(files.names());
    if (!hasManifest(folder)) {
      wanted.add(MANIFEST);
    }
    for (String name : wanted) {
      Path there = folder.resolve(name);
      if (throughLink(folder, there)) {
        foreign.add(Message.of("project.out-folder.is-a-link", name));
      } else if (Files.exists(there, LinkOption.NOFOLLOW_LINKS) && !ours.contains(name)) {
        foreign.add(Message.of("project.out-folder.name", name));
      }
    }
    if (!foreign.isEmpty()) {
      throw RefusedInput.of(
          Message.of("project.out-folder.foreign", folder.toString(), listed(foreign)));
    }
  }

  /** The first of them, at most three. */
  private static Message listed(List<Message> foreign) {
    return switch (foreign.size()) {
      case 1 -> foreign.get(0);
      case 2 -> Message.of("project.out-folder.two", foreign.get(0), foreign.get(1));
      default ->
          Message.of("project.out-folder.three", foreign.get(0), foreign.get(1), foreign.get(2));
    };
  }

  private static boolean throughLink(Path folder, Path file) {
    Path parent = file.getParent();
    return Files.isSymbolicLink(file) || (!parent.equals(folder) && Files.isSymbolicLink(parent));
  }
}
