package slabwright.project;

import java.nio.file.Path;
import java.util.List;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.sheets.json.TallyJson;
import slabwright.site.Site;
import slabwright.store.ReleaseArchive;
import slabwright.words.Words;

/**
 * The floors of a site alone: net areas, edges, machine and hand work.
 *
 * @param plan its file, which releases lie beside
 */
public record SiteTally(Site site, Path plan, List<FloorTakeoff> floors) {
  public SiteTally {
    floors = List.copyOf(floors);
  }

  public static SiteTally of(Site site, Path plan) {
    return new SiteTally(site, plan, site.areas().stream().map(FloorTakeoff::of).toList());
  }

  /**
   * With how wide a machine reaches how much, and the release while it holds; the same in every
   * language, as programs read it.
   */
  public String json() {
    return TallyJson.write(
        new ReleaseArchive(plan).withoutOutdatedReleases(site),
        floors.stream().map(ReachAnalysis::of).toList(),
        Words.english());
  }
}
