package slabwright.desk.model.plan;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.CancellationException;
import slabwright.project.plan.GraphicStamp;
import slabwright.project.plan.ReleaseFiles;
import slabwright.site.Inlay;
import slabwright.site.Site;
import slabwright.units.Message;

/**
 * What the files beside a plan say of it.
 *
 * @param changed inlays whose graphic is no longer what was accepted
 * @param changes what changed since the last release and the one that is compared
 * @param graphicsSeen grows when a graphic that was looked at before was written since
 */
public record ReleaseReading(
    Question asked, Set<Inlay> changed, Map<Integer, Since> changes, long graphicsSeen) {
  /**
   * What changed since a release.
   *
   * @param all empty when nothing did; absent when the frozen copy is not beside the plan
   */
  public record Since(Optional<List<Message>> all) {}

  /**
   * What it is asked of.
   *
   * @param compared number of the release that the plan is compared with, besides the last
   * @param looks asked again under another one
   */
  record Question(Path plan, Site site, Optional<Integer> compared, int looks) {}

  boolean isChanged(Inlay i) {
    return changed.contains(i);
  }

  Optional<Since> since(int number) {
    return Optional.ofNullable(changes.get(number));
  }

  /** True before the first release. */
  boolean isAsIssued() {
    int last = asked.site().releaseNumber();
    return last == 0 || since(last).flatMap(Since::all).filter(List::isEmpty).isPresent();
  }

  /** Reads, and keeps what it has read; used by one thread. */
  static final class Reader {
    private Optional<ReleaseFiles> files = Optional.empty();
    private final Map<Path, GraphicStamp> stamps = new HashMap<>();
    private long graphicsSeen;

    ReleaseReading read(Question q) {
      ReleaseFiles from =
          files.filter(f -> f.plan().equals(q.plan())).orElseGet(() -> new ReleaseFiles(q.plan()));
      files = Optional.empty();
      lookAt(from.stamps(q.site()), from);
      Set<Inlay> changed = new HashSet<>();
      q.site().areas().stream()
          .flatMap(a -> a.inlays().stream())
          .filter(from::isChanged)
          .forEach(changed::add);
      Map<Integer, Since> changes = new HashMap<>();
      q.site().releases().stream()
          .map(r -> r.number())
          .filter(n -> n == q.site().releaseNumber() || q.compared().equals(Optional.of(n)))
          .forEach(n -> changes.put(n, new Since(from.since(n, q.site()))));
      if (Thread.currentThread().isInterrupted()) {
        // What was read of an interrupted file is no answer, and is not to be kept.
        throw new CancellationException();
      }
      files = Optional.of(from);
      return new ReleaseReading(q, changed, changes, graphicsSeen);
    }

    private void lookAt(List<GraphicStamp> now, ReleaseFiles from) {
      boolean other =
          now.stream()
              .anyMatch(s -> stamps.containsKey(s.file()) && !stamps.get(s.file()).equals(s));
      now.forEach(s -> stamps.put(s.file(), s));
      if (other) {
        graphicsSeen++;
        from.recheck();
      }
    }
  }
}
