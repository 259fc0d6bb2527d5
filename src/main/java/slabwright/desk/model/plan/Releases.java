package slabwright.desk.model.plan;

import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.model.BackgroundTasks;
import slabwright.desk.model.Desk;
import slabwright.desk.model.Signal;
import slabwright.project.plan.FrozenRelease;
import slabwright.project.plan.GraphicStamp;
import slabwright.project.plan.ReleaseFiles;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Site;
import slabwright.site.edit.Edit;
import slabwright.units.Message;
import slabwright.units.Result;

/**
 * Issues releases: the plan and its graphics frozen under a number that every sheet and cut file
 * carries until something changes. Tells what changed since a release, also of one issued long ago.
 */
public final class Releases {
  private record Judged(Site site, int looks) {}

  private final Desk desk;
  private final Supplier<Optional<Path>> plan;
  private final BackgroundTasks errands;
  private final Signal changed = new Signal();
  private Optional<ReleaseFiles> last = Optional.empty();
  private List<GraphicStamp> stamps = List.of();
  private Optional<Judged> judged = Optional.empty();
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

  /** The files of the open plan. */
  private Optional<ReleaseFiles> files() {
    Optional<Path> now = plan.get();
    if (!now.equals(last.map(ReleaseFiles::plan))) {
      last = now.map(ReleaseFiles::new);
    }
    return last;
  }

  /** Graphics may have changed on disk, as after another program had the screen. */
  public void recheckGraphics() {
    List<GraphicStamp> now = files().map(f -> f.stamps(desk.site())).orElse(List.of());
    if (!now.equals(stamps)) {
      stamps = now;
      looks++;
      files().ifPresent(ReleaseFiles::recheck);
      changed.fire();
    }
  }

  /** Issues the next release as one step, every graphic accepted as it is now. */
  public void issue(String note) {
    Site site = desk.site();
    LocalDate today = LocalDate.now(ZoneId.systemDefault());
    plan.get()
        .ifPresent(
            file ->
                errands.run(
                    new BackgroundTasks.BackgroundTask<>(
                        Message.of("desk.model.releases.freezing"),
                        why -> Message.of("desk.model.releases.nothing-issued", why),
                        steps -> ReleaseFiles.freeze(file, site, note, today),
                        this::push)));
  }

  private void push(FrozenRelease issued) {
    if (!desk.site().equals(issued.before())) {
      desk.refuse(Message.of("desk.model.releases.changed-meanwhile"));
    } else if (desk.push(issued.edit()).isOk()) {
      desk.announce(Message.of("desk.model.releases.issued", issued.number()));
    }
  }

  /**
   * Whether the inlay's graphic on disk is no longer what was accepted, as when it was last looked
   * at.
   */
  public boolean changedOnDisk(Inlay i) {
    return files().filter(f -> f.isChanged(i)).isPresent();
  }

  /** Whether the plan is what its last release froze; true before the first release. */
  public boolean isAsIssued() {
    Judged now = new Judged(desk.site(), looks);
    if (!judged.equals(Optional.of(now))) {
      judged = Optional.of(now);
      List<Integer> all = numbers();
      asIssued = all.isEmpty() || since(all.get(0)).map(List::isEmpty).orElse(false);
    }
    return asIssued;
  }

  /** Accepts the inlay's graphic as it is on disk now. */
  public void accept(FloorArea area, Inlay i) {
    Optional<Result<Edit>> accepted = files().map(f -> f.accept(area, i));
    if (accepted.isPresent() && accepted.get() instanceof Result.Refused<Edit> refused) {
      desk.refuse(refused.refusals().get(0));
    } else {
      accepted.map(Result::orThrow).ifPresent(desk::push);
    }
  }

  /** Numbers of the releases issued, latest first. */
  public List<Integer> numbers() {
    List<Integer> all = new ArrayList<>();
    desk.site().releases().forEach(r -> all.add(0, r.number()));
    return all;
  }

  /**
   * What changed since a release; empty when nothing did.
   *
   * @return absent when the release's frozen copy is not beside the plan
   */
  public Optional<List<Message>> since(int number) {
    return files().flatMap(f -> f.since(number, desk.site()));
  }
}
