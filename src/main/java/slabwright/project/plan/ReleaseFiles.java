package slabwright.project.plan;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import slabwright.project.PlanChanges;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Release;
import slabwright.site.Site;
import slabwright.site.edit.AreaEdit;
import slabwright.site.edit.Edit;
import slabwright.site.edit.SiteEdit;
import slabwright.store.GraphicFiles;
import slabwright.store.ReleaseArchive;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * The releases of a plan and the graphics it names, on disk. What was read is kept: a frozen copy
 * never changes, and graphics are read again only after {@link #recheck}. For one thread.
 */
public final class ReleaseFiles {
  private final Path plan;
  private final Map<Integer, Optional<Site>> frozen = new HashMap<>();
  private final Map<Judged, Boolean> changed = new HashMap<>();

  /** What a graphic was judged by. */
  private record Judged(String graphic, String accepted) {}

  /**
   * The files beside a plan.
   *
   * @param plan its file
   */
  public ReleaseFiles(Path plan) {
    this.plan = plan;
  }

  public Path plan() {
    return plan;
  }

  /**
   * Freezes a site and its graphics under the next number, which was never used before. Refused
   * when the release can't be issued; nothing is left then. On any thread.
   *
   * @throws IOException when a file cannot be read or written
   */
  public static Result<FrozenRelease> freeze(Path plan, Site site, String note, LocalDate today)
      throws IOException {
    ReleaseArchive copies = new ReleaseArchive(plan);
    int number = Math.max(site.releaseNumber(), copies.highest()) + 1;
    SortedMap<String, String> hashes = hashes(site, plan);
    List<Edit> edits = new ArrayList<>();
    for (FloorArea area : site.areas()) {
      for (Inlay i : area.inlays()) {
        edits.add(accepted(area, i, hashes.get(i.graphic())));
      }
    }
    edits.add(new SiteEdit.Issue(new Release(number, today, note, hashes)));
    Edit edit = new Edit.Several(Message.of("project.release-files.issue-step", number), edits);
    Result<Site> next = edit.apply(site);
    if (next instanceof Result.Ok<Site> done) {
      copies.write(done.value(), number);
    }
    return next.map(s -> new FrozenRelease(site, edit, number));
  }

  private static Edit accepted(FloorArea area, Inlay i, String hash) {
    return new AreaEdit.PutInlay(area.id(), i.withAccepted(hash));
  }

  private static SortedMap<String, String> hashes(Site site, Path plan) throws IOException {
    SortedMap<String, String> all = new TreeMap<>();
    for (FloorArea area : site.areas()) {
      for (Inlay i : area.inlays()) {
        all.put(i.graphic(), GraphicFiles.hash(GraphicFiles.file(plan, i.graphic())));
      }
    }
    return all;
  }

  /** The graphics a site names as they lie there now. */
  public List<GraphicStamp> stamps(Site site) {
    return site.areas().stream()
        .flatMap(a -> a.inlays().stream())
        .map(i -> GraphicStamp.of(GraphicFiles.file(plan, i.graphic())))
        .toList();
  }

  /** Graphics may have changed on disk; each is read again when it is next asked for. */
  public void recheck() {
    changed.clear();
  }

  /**
   * Whether an inlay's graphic on disk is no longer what was accepted, as when it was last read.
   */
  public boolean isChanged(Inlay i) {
    return changed.computeIfAbsent(
        new Judged(i.graphic(), i.accepted()), k -> GraphicFiles.isChanged(i, plan));
  }

  /** The edit that accepts an inlay's graphic as it is on disk now. */
  public Result<Edit> accept(FloorArea area, Inlay i) {
    try {
      String hash = GraphicFiles.hash(GraphicFiles.file(plan, i.graphic()));
      return Result.ok(
          new Edit.Several(
              Message.of("project.release-files.accept-step"), List.of(accepted(area, i, hash))));
    } catch (IOException e) {
      return Result.refused(
          Message.of("project.plan.graphic-unreadable", String.valueOf(e.getMessage())));
    }
  }

  /**
   * What changed since a release, graphics on disk included; empty when nothing did. To be said
   * with a capital, each on its own line.
   *
   * @return absent when the release's frozen copy is not beside the plan
   */
  public Optional<List<Message>> since(int number, Site now) {
    return frozen
        .computeIfAbsent(number, new ReleaseArchive(plan)::read)
        .map(then -> all(then, now));
  }

  private List<Message> all(Site then, Site now) {
    List<Message> all = new ArrayList<>(PlanChanges.between(then, now));
    now.areas().stream()
        .flatMap(a -> a.inlays().stream())
        .filter(this::isChanged)
        .map(i -> PlanChanges.named(i.name(), i.id()))
        .map(name -> Message.of("project.plan.graphic-changed", name))
        .forEach(all::add);
    return all;
  }
}
