package slabwright.project;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slabwright.inlay.PlacedInlay;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.units.PartFaults;
import slabwright.units.Result;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/**
 * A plan worked out with the floor areas that can be: one whose graphic can't be used, or that a
 * fault of the program ends, is left out whole, for papers that lacked its stencils, dye and days
 * in silence would mislead.
 *
 * @param result of the areas that are left; its note, in place of the site's own for want of room
 *     on a sheet, names those that are not
 * @param leftOut why, a sentence for each inlay
 * @param faults areas that a fault ended
 */
public record UsableAreas(
    SiteResult result, List<Message> leftOut, List<PartFaults.PartFault> faults) {
  public UsableAreas {
    leftOut = List.copyOf(leftOut);
    faults = List.copyOf(faults);
  }

  /** Areas looked at one by one. */
  private static final class Sorting {
    private final List<FloorArea> left = new ArrayList<>();
    private final List<FloorArea> out = new ArrayList<>();
    private final List<Message> why = new ArrayList<>();
    private final PartFaults faults = new PartFaults();
    private final Site site;
    private final Path plan;
    private final AreaCache cache = new AreaCache();

    Sorting(Site site, Path plan) {
      this.site = site;
      this.plan = plan;
    }

    /** By what can be computed of each floor. */
    void byFloor() {
      Path folder = plan.toAbsolutePath().getParent();
      for (FloorArea area : site.areas()) {
        Optional<AreaResult> done =
            faults.makeOfFiles(
                named(area),
                true,
                () -> Optional.of(cache.of(area, site.units(), folder, () -> false)),
                Optional::empty);
        List<PlacedInlay.Placing.Refused> refused = done.map(AreaResult::refused).orElse(List.of());
        (done.isPresent() && refused.isEmpty() ? left : out).add(area);
        for (PlacedInlay.Placing.Refused r : refused) {
          why.add(
              Message.of(
                  "project.usable-areas.left-out", area.name(), r.inlay().name(), r.message()));
        }
      }
    }

    /** By what work can be planned on each alone. */
    void byWork() {
      for (FloorArea area : List.copyOf(left)) {
        Optional<Result<SiteResult>> alone =
            faults.makeOfFiles(
                named(area),
                true,
                () -> Optional.of(compute(site.withAreas(List.of(area)))),
                Optional::empty);
        if (alone.isEmpty()) {
          left.remove(area);
          out.add(area);
        }
      }
    }

    Result<SiteResult> compute(Site part) throws IOException {
      return SiteResult.compute(part, plan, cache, () -> false);
    }

    private static Message named(FloorArea area) {
      return Message.of("project.usable-areas.area", area.name());
    }

    /** The site with the areas that are left; its note names the others. */
    Site rest(Words words) {
      String names = out.stream().map(FloorArea::name).collect(Collectors.joining(", "));
      return out.isEmpty()
          ? site
          : site.withAreas(left).withNote(words.say("project.usable-areas.note", names));
    }

    private Message first() {
      return why.isEmpty() ? faults.all().get(0).sentence() : why.get(0);
    }
  }

  /**
   * Works a plan out; refused when its shop book can't be read or no area is left.
   *
   * @throws IOException when a file breaks while it is read
   */
  public static Result<UsableAreas> compute(Site site, Path plan, Words words) throws IOException {
    Sorting areas = new Sorting(site, plan);
    areas.byFloor();
    PartFaults whole = new PartFaults();
    Optional<Result<SiteResult>> all =
        whole.makeOfFiles(
            Message.of("project.usable-areas.work"),
            true,
            () -> Optional.of(areas.compute(areas.rest(words))),
            Optional::empty);
    if (all.isEmpty()) {
      areas.byWork();
    }
    if (areas.left.isEmpty() && !areas.out.isEmpty()) {
      return Result.refused(Message.of("project.usable-areas.none", areas.first()));
    }
    Result<SiteResult> rest = all.isPresent() ? all.get() : areas.compute(areas.rest(words));
    return rest.map(done -> new UsableAreas(done, areas.why, areas.faults.all()));
  }

  /** Whether nothing had to be left out. */
  public boolean isWhole() {
    return leftOut.isEmpty() && faults.isEmpty();
  }
}
