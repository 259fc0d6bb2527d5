package slabwright.desk.model.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import slabwright.desk.model.BackgroundTasks;
import slabwright.desk.model.Desk;
import slabwright.desk.model.ReadySentence;
import slabwright.desk.model.Signal;
import slabwright.desk.model.edit.InlayChange;
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
 * Issues releases: the plan and its graphics frozen under a number that every sheet and cut file
 * carries until something changes. Tells what changed since a release, also of one issued long ago.
 */
public final class Releases {
  private record Issued(Site before, Edit edit, int number) {}

  private final Desk desk;
  private final Supplier<Optional<Path>> plan;
  private final BackgroundTasks errands;
  private final Map<Path, Optional<Site>> frozen = new HashMap<>();
  private final Signal changed = new Signal();
  private Optional<Path> looked = Optional.empty();
  private final Map<List<Object>, Boolean> changedGraphics = new HashMap<>();
  private List<Object> stamps = List.of();
  private List<Object> judged = List.of();
  private boolean asIssued = true;
  private int looks;

  public Releases(Desk desk, Supplier<Optional<Path>> plan, BackgroundTasks errands) {
    this.desk = desk;
    this.plan = plan;
    this.errands = errands;
  }

  /** Given when graphics on disk should be looked at again. */
  public Signal changed() {
    return changed;
  }

  /** How often graphics on disk were looked at again. */
  public int graphicChecks() {
    return looks;
  }

  /** Graphics may have changed on disk, as after another program had the screen. */
  public void recheckGraphics() {
    List<Object> now = new ArrayList<>();
    for (FloorArea area : desk.site().areas()) {
      area.inlays().forEach(i -> plan.get().ifPresent(p -> now.add(stamp(p, i))));
    }
    if (!now.equals(stamps)) {
      stamps = now;
      looks++;
      changed.fire();
    }
  }

  private static Object stamp(Path plan, Inlay i) {
    Path file = GraphicFiles.file(plan, i.graphic());
    try {
      return List.of(file, Files.getLastModifiedTime(file), Files.size(file));
    } catch (IOException e) {
      return file;
    }
  }

  /** Issues the next release as one step, every graphic accepted as it is now. */
  public void issue(String note) {
    Site site = desk.site();
    plan.get()
        .ifPresent(
            file ->
                errands.run(
                    new BackgroundTasks.BackgroundTask<>(
                        Message.of("desk.model.releases.freezing"),
                        why -> Message.of("desk.model.releases.nothing-issued", why),
                        steps -> freeze(site, file, note),
                        this::push)));
  }

  private static Result<Issued> freeze(Site site, Path file, String note) throws IOException {
    ReleaseArchive copies = new ReleaseArchive(file);
    int number = Math.max(site.releaseNumber(), copies.highest()) + 1;
    SortedMap<String, String> hashes = hashes(site, file);
    List<Edit> edits = new ArrayList<>();
    for (FloorArea area : site.areas()) {
      for (Inlay i : area.inlays()) {
        edits.add(
            new AreaEdit.PutInlay(area.id(), InlayChange.accepted(i, hashes.get(i.graphic()))));
      }
    }
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    edits.add(new SiteEdit.Issue(new Release(number, today, note, hashes)));
    Edit edit = new Edit.Several(Message.of("desk.model.releases.issue-step", number), edits);
    Result<Site> next = edit.apply(site);
    if (next instanceof Result.Ok<Site> done) {
      copies.write(done.value(), number);
    }
    return next.map(s -> new Issued(site, edit, number));
  }

  private void push(Issued issued) {
    if (!desk.site().equals(issued.before())) {
      desk.refuse(Message.of("desk.model.releases.changed-meanwhile"));
    } else if (desk.push(issued.edit()).isOk()) {
      desk.announce(Message.of("desk.model.releases.issued", issued.number()));
    }
  }

  private static SortedMap<String, String> hashes(Site site, Path file) throws IOException {
    SortedMap<String, String> all = new TreeMap<>();
    for (FloorArea area : site.areas()) {
      for (Inlay i : area.inlays()) {
        all.put(i.graphic(), GraphicFiles.hash(GraphicFiles.file(file, i.graphic())));
      }
    }
    return all;
  }

  /**
   * Whether the inlay's graphic on disk is no longer what was accepted, as when it was last looked
   * at.
   */
  public boolean changedOnDisk(Inlay i) {
    Optional<Path> file = plan.get();
    return file.isPresent()
        && changedGraphics.computeIfAbsent(
            List.of(GraphicFiles.file(file.get(), i.graphic()), i.accepted(), looks),
            k -> GraphicFiles.isChanged(i, file.get()));
  }

  /** Whether the plan is what its last release froze; true before the first release. */
  public boolean isAsIssued() {
    List<Object> now = List.of(desk.site(), looks);
    if (!now.equals(judged)) {
      judged = now;
      List<Integer> all = numbers();
      asIssued = all.isEmpty() || since(all.get(0)).map(List::isEmpty).orElse(false);
    }
    return asIssued;
  }

  /** Accepts the inlay's graphic as it is on disk now. */
  public void accept(FloorArea area, Inlay i) {
    try {
      Path file = plan.get().orElseThrow(() -> new IOException("no plan is open"));
      String hash = GraphicFiles.hash(GraphicFiles.file(file, i.graphic()));
      AreaEdit put = new AreaEdit.PutInlay(area.id(), InlayChange.accepted(i, hash));
      desk.push(new Edit.Several(Message.of("desk.model.releases.accept-step"), List.of(put)));
    } catch (IOException e) {
      desk.refuse(
          Message.of("desk.model.releases.graphic-unreadable", String.valueOf(e.getMessage())));
    }
  }

  /** Numbers of the releases issued, latest first. */
  public List<Integer> numbers() {
    List<Integer> all = new ArrayList<>();
    desk.site().releases().forEach(r -> all.add(0, r.number()));
    return all;
  }

  /**
   * What changed since a release, in words; empty when nothing did.
   *
   * @return absent when the release's frozen copy is not beside the plan
   */
  public Optional<List<Message>> since(int number) {
    Site now = desk.site();
    return frozen(number).map(then -> all(then, now));
  }

  private List<Message> all(Site then, Site now) {
    List<Message> words = new ArrayList<>();
    PlanChanges.between(then, now).forEach(c -> words.add(ReadySentence.message(c)));
    for (FloorArea area : now.areas()) {
      area.inlays().stream()
          .filter(this::changedOnDisk)
          .map(i -> PlanChanges.named(i.name(), i.id()))
          .map(name -> Message.of("desk.model.releases.graphic-changed", name))
          .forEach(words::add);
    }
    return words;
  }

  private Optional<Site> frozen(int number) {
    Optional<Path> file = plan.get();
    if (!file.equals(looked)) {
      frozen.clear();
      looked = file;
    }
    return file.flatMap(
        f -> {
          ReleaseArchive copies = new ReleaseArchive(f);
          return frozen.computeIfAbsent(copies.folder(number), k -> copies.read(number));
        });
  }
}
