package slabwright.store;

import java.io.IOException;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import slabwright.site.Site;
import slabwright.site.rules.InlaySpecRules;
import slabwright.units.Result;

/**
 * The frozen copies of a plan's releases: a folder for each beside the plan, with the plan and its
 * graphics as they were issued. It is written once and never changed; it opens like any plan.
 *
 * @param plan the plan's file
 */
public record ReleaseArchive(Path plan) {
  private static final String ENDING = ".site.json";

  private String stem() {
    return plan.getFileName().toString().replaceFirst("(\\.site)?\\.json$", "");
  }

  private Path home() {
    return plan.toAbsolutePath().getParent();
  }

  /** The folder of a release; it need not be there. */
  public Path folder(int number) {
    return home().resolve(stem() + "-release-" + number);
  }

  /** The plan file of a release; it need not be there. */
  public Path file(int number) {
    return folder(number).resolve(stem() + ENDING);
  }

  /**
   * Freezes a site under a number, with every graphic it names.
   *
   * @throws IOException when a graphic cannot be copied or the number is taken; nothing is left
   *     then
   */
  public void write(Site site, int number) throws IOException {
    write(site, number, plan);
  }

  /** Graphics are copied from beside the file {@code from}. */
  private void write(Site site, int number, Path from) throws IOException {
    Path to = folder(number);
    if (Files.exists(to)) {
      throw new FileAlreadyExistsException(to.toString());
    }
    Files.createDirectories(home());
    Path staging = Files.createTempDirectory(home(), "." + to.getFileName());
    try {
      for (String name : graphics(site)) {
        Path copy = staging.resolve(name);
        Files.createDirectories(copy.getParent());
        Files.copy(GraphicFiles.file(from, name), copy);
      }
      PlanFile.save(site, staging.resolve(stem() + ENDING));
      Files.move(staging, to);
    } finally {
      FolderDeletion.delete(staging);
    }
  }

  private static Set<String> graphics(Site site) {
    Set<String> names = new LinkedHashSet<>();
    site.areas().forEach(a -> a.inlays().forEach(i -> names.add(i.graphic())));
    names.removeIf(n -> !InlaySpecRules.staysInside(n));
    return names;
  }

  /** The site as it was issued under a number; empty when its frozen copy is not there. */
  public Optional<Site> read(int number) {
    return PlanFile.read(file(number)) instanceof Result.Ok<Site> good
        ? Optional.of(good.value())
        : Optional.empty();
  }

  /** The highest number that has a frozen copy, 0 when none has. Numbers are never used twice. */
  public int highest() {
    Pattern named = Pattern.compile(Pattern.quote(stem()) + "-release-([0-9]{1,6})");
    if (!Files.isDirectory(home())) {
      return 0;
    }
    try (Stream<Path> all = Files.list(home())) {
      return all.map(p -> named.matcher(p.getFileName().toString()))
          .filter(Matcher::matches)
          .mapToInt(m -> Integer.parseInt(m.group(1)))
          .max()
          .orElse(0);
    } catch (IOException e) {
      return 0;
    }
  }

  /**
   * Whether the site is what its last release froze, graphics on disk included. How numbers are
   * shown, the picture to trace over, and the readings and photos of the days are no part of that.
   */
  public boolean isAsIssued(Site site) {
    int last = site.releaseNumber();
    return last > 0
        && read(last).map(f -> bare(f).equals(bare(site))).orElse(false)
        && site.areas().stream()
            .flatMap(a -> a.inlays().stream())
            .noneMatch(i -> GraphicFiles.isChanged(i, plan));
  }

  private static Site bare(Site s) {
    return Site.empty(s.name(), slabwright.units.UnitSystem.METRIC)
        .withNote(s.note())
        .withStart(s.start())
        .withAreas(s.areas())
        .withJob(s.job().withReadings(List.of()).withPhotos(List.of()));
  }

  /** The site with the releases that sheets and cut files may carry: none when it changed since. */
  public Site withoutOutdatedReleases(Site site) {
    return site.releases().isEmpty() || isAsIssued(site) ? site : site.withReleases(List.of());
  }

  /**
   * Copies the frozen copies of a site's releases beside another plan file; what is there already
   * is left.
   *
   * @throws IOException when they cannot be copied
   */
  public void copyTo(Path otherPlan, Site site) throws IOException {
    ReleaseArchive other = new ReleaseArchive(otherPlan);
    for (var release : site.releases()) {
      Optional<Site> frozen = read(release.number());
      if (frozen.isPresent() && !Files.exists(other.folder(release.number()))) {
        other.write(frozen.get(), release.number(), file(release.number()));
      }
    }
  }
}
