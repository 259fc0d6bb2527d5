package slabwright.site;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import slabwright.units.UnitSystem;

/**
 * The job's place. Frame: millimetres, x right, y up, turns counter-clockwise.
 *
 * @param note one line printed under the name on every sheet, such as "invented"
 * @param start when work begins, for the day plan
 */
@RecordBuilder
public record Site(
    String name,
    String note,
    UnitSystem units,
    Optional<LocalDateTime> start,
    List<FloorArea> areas,
    Optional<Underlay> underlay,
    List<Release> releases,
    JobDetails job)
    implements SiteBuilder.With {
  public Site {
    areas = List.copyOf(areas);
    releases = List.copyOf(releases);
  }

  /** A site of which nothing more is known. */
  public Site(
      String name,
      String note,
      UnitSystem units,
      Optional<LocalDateTime> start,
      List<FloorArea> areas,
      Optional<Underlay> underlay,
      List<Release> releases) {
    this(name, note, units, start, areas, underlay, releases, JobDetails.NONE);
  }

  public static Site empty(String name, UnitSystem units) {
    return new Site(name, "", units, Optional.empty(), List.of(), Optional.empty(), List.of());
  }

  public Optional<FloorArea> area(String id) {
    return areas.stream().filter(a -> a.id().equals(id)).findFirst();
  }

  /** The number that sheets and cut files carry: the last release, 0 before the first. */
  public int releaseNumber() {
    return releases.stream().mapToInt(Release::number).max().orElse(0);
  }
}
