package slabwright.site;

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
public record Site(
    String name,
    String note,
    UnitSystem units,
    Optional<LocalDateTime> start,
    List<FloorArea> areas,
    Optional<Underlay> underlay,
    List<Release> releases,
    JobDetails job) {
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

  public Site withName(String v) {
    return new Site(v, note, units, start, areas, underlay, releases, job);
  }

  public Site withNote(String v) {
    return new Site(name, v, units, start, areas, underlay, releases, job);
  }

  public Site withUnits(UnitSystem v) {
    return new Site(name, note, v, start, areas, underlay, releases, job);
  }

  public Site withStart(Optional<LocalDateTime> v) {
    return new Site(name, note, units, v, areas, underlay, releases, job);
  }

  public Site withAreas(List<FloorArea> v) {
    return new Site(name, note, units, start, v, underlay, releases, job);
  }

  public Site withUnderlay(Optional<Underlay> v) {
    return new Site(name, note, units, start, areas, v, releases, job);
  }

  public Site withReleases(List<Release> v) {
    return new Site(name, note, units, start, areas, underlay, v, job);
  }

  public Site withJob(JobDetails v) {
    return new Site(name, note, units, start, areas, underlay, releases, v);
  }
}
