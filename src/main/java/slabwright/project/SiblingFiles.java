package slabwright.project;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.Set;
import slabwright.site.Site;
import slabwright.site.rules.InlaySpecRules;
import slabwright.store.AtomicFile;

/**
 * Files that lie beside a plan: graphics, photos and the underlay. Nothing is ever written over.
 */
public final class SiblingFiles {
  private SiblingFiles() {}

  /** Copies a file into the folder under its own name, or the first free one; gives that name. */
  public static String copyInto(Path file, Path folder) throws IOException {
    Files.createDirectories(folder);
    String name = file.getFileName().toString();
    if (file.toAbsolutePath().getParent().equals(folder.toAbsolutePath())) {
      return name;
    }
    Path to = free(folder, name, file);
    if (!Files.exists(to)) {
      Files.copy(file, to);
    }
    return to.getFileName().toString();
  }

  /** The name itself where nothing or the same content lies; else the name with a number. */
  private static Path free(Path folder, String name, Path source) throws IOException {
    int dot = name.lastIndexOf('.');
    String stem = dot < 0 ? name : name.substring(0, dot);
    String ending = dot < 0 ? "" : name.substring(dot);
    Path to = folder.resolve(name);
    int n = 2;
    while (Files.exists(to) && (source == null || Files.mismatch(to, source) != -1)) {
      to = folder.resolve(stem + "-" + n + ending);
      n++;
    }
    return to;
  }

  /**
   * Writes a new file into the folder under a name, or the first like it that nothing has; gives
   * that name.
   *
   * @throws IOException when it can't be written
   */
  public static String write(Path folder, String name, byte[] bytes) throws IOException {
    Path to = free(folder, name, null);
    AtomicFile.write(to, bytes);
    return to.getFileName().toString();
  }

  /** Copies what a site names from one folder to another; a file already there is kept. */
  public static void copyAll(Site site, Path from, Path to) throws IOException {
    Set<String> names = new LinkedHashSet<>();
    site.areas().forEach(a -> a.inlays().forEach(i -> names.add(i.graphic())));
    site.areas()
        .forEach(
            a -> a.inlays().forEach(i -> i.source().picture().ifPresent(p -> names.add(p.file()))));
    site.underlay().ifPresent(u -> names.add(u.file()));
    site.job().clientPhoto().ifPresent(c -> names.add(c.file()));
    site.job().photos().forEach(c -> names.add(c.file()));
    for (String name : names) {
      Path target = to.resolve(name);
      if (InlaySpecRules.staysInside(name)
          && Files.exists(from.resolve(name))
          && !Files.exists(target)) {
        Files.createDirectories(target.getParent());
        Files.copy(from.resolve(name), target);
      }
    }
  }
}
