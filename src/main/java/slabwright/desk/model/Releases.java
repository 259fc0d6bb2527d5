package slabwright.desk.model;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Supplier;
import slabwright.site.AreaEdit;
import slabwright.site.Edit;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Refusal;
import slabwright.site.Release;
import slabwright.site.Site;
import slabwright.site.SiteEdit;
import slabwright.store.Graphics;

/**
 * Issues releases: the plan and its graphics frozen under a number that every sheet and cut file
 * carries.
 */
public final class Releases {
  private final Desk desk;
  private final Supplier<Optional<Path>> plan;

  public Releases(Desk desk, Supplier<Optional<Path>> plan) {
    this.desk = desk;
    this.plan = plan;
  }

  /** Issues the next release as one step, every graphic accepted as it is now. */
  public void issue(String note) {
    Site site = desk.site();
    int number = site.releaseNumber() + 1;
    try {
      SortedMap<String, String> hashes = hashes(site);
      List<Edit> edits = new ArrayList<>();
      for (FloorArea area : site.areas()) {
        for (Inlay i : area.inlays()) {
          edits.add(new AreaEdit.PutInlay(area.id(), Inlays.accepted(i, hashes.get(i.graphic()))));
        }
      }
      LocalDate today = LocalDate.now(ZoneId.systemDefault());
      edits.add(new SiteEdit.Issue(new Release(number, today, note, hashes)));
      desk.push(new Edit.Several("issue release " + number, edits));
    } catch (IOException e) {
      desk.refuse(Refusal.of("A graphic cannot be read, so nothing was issued: " + e.getMessage()));
    }
  }

  private SortedMap<String, String> hashes(Site site) throws IOException {
    SortedMap<String, String> all = new TreeMap<>();
    Path file = plan.get().orElseThrow(() -> new IOException("no plan is open"));
    for (FloorArea area : site.areas()) {
      for (Inlay i : area.inlays()) {
        all.put(i.graphic(), Graphics.hash(Graphics.file(file, i.graphic())));
      }
    }
    return all;
  }

  /** The inlay's graphic as it is on disk now, when it is not what was accepted. */
  public boolean changedOnDisk(Inlay i) {
    if (i.accepted().isEmpty() || plan.get().isEmpty()) {
      return false;
    }
    try {
      return !Graphics.hash(Graphics.file(plan.get().get(), i.graphic())).equals(i.accepted());
    } catch (IOException e) {
      return true;
    }
  }

  /** What changed since the last release, in words; empty when there was none or nothing did. */
  public List<String> since() {
    List<String> names = new ArrayList<>();
    var history = desk.history();
    for (int i = history.position(); i > 0; i--) {
      String name = history.names().get(i);
      if (name.startsWith("issue release")) {
        return names;
      }
      if (!names.contains(name)) {
        names.add(0, name);
      }
    }
    return desk.site().releases().isEmpty() ? List.of() : names;
  }
}
