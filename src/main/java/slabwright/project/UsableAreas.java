package slabwright.project;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slabwright.inlay.PlacedInlay;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/**
 * A plan worked out with the floor areas that can be: one whose graphic can't be used is left out
 * whole, for papers that lacked its stencils, dye and days in silence would mislead.
 *
 * @param result of the areas that are left; its note, in place of the site's own for want of room
 *     on a sheet, names those that are not
 * @param leftOut why, a sentence for each inlay
 */
public record UsableAreas(SiteResult result, List<Message> leftOut) {
  public UsableAreas {
    leftOut = List.copyOf(leftOut);
  }

  /**
   * Works a plan out; refused when its shop book can't be read or no area is left.
   *
   * @throws IOException when a file breaks while it is read
   */
  public static Result<UsableAreas> compute(Site site, Path plan, Words words) throws IOException {
    AreaCache cache = new AreaCache();
    Result<SiteResult> all = SiteResult.compute(site, plan, cache, () -> false);
    if (all instanceof Result.Refused<SiteResult> bad) {
      return Result.refused(bad.refusals());
    }
    List<FloorArea> left = new ArrayList<>();
    List<FloorArea> out = new ArrayList<>();
    List<Message> why = new ArrayList<>();
    for (AreaResult a : all.orThrow().areas()) {
      FloorArea area = a.takeoff().area();
      (a.refused().isEmpty() ? left : out).add(area);
      for (PlacedInlay.Placing.Refused r : a.refused()) {
        why.add(
            Message.of(
                "project.usable-areas.left-out", area.name(), r.inlay().name(), r.message()));
      }
    }
    if (left.isEmpty() && !out.isEmpty()) {
      return Result.refused(Message.of("project.usable-areas.none", why.get(0)));
    }
    if (out.isEmpty()) {
      return all.map(done -> new UsableAreas(done, why));
    }
    String names = out.stream().map(FloorArea::name).collect(Collectors.joining(", "));
    String said = words.say("project.usable-areas.note", names);
    Site rest = site.withAreas(left).withNote(said);
    return SiteResult.compute(rest, plan, cache, () -> false)
        .map(done -> new UsableAreas(done, why));
  }

  /** Whether nothing had to be left out. */
  public boolean isWhole() {
    return leftOut.isEmpty();
  }
}
