package slabwright.desk.shell;

import slabwright.desk.model.Selection;
import slabwright.desk.model.Stage;
import slabwright.desk.model.plan.Releases;
import slabwright.site.FloorArea;
import slabwright.site.Site;

/**
 * How far each stage of a floor area has come, by what the plan holds; what files beside it say
 * counts once they were read.
 */
final class StageStates {
  private StageStates() {}

  public static Stage.State of(Stage stage, Site site, Selection focus, Releases releases) {
    if (stage == Stage.SHEETS) {
      return site.releases().isEmpty() || !releases.isKnown()
          ? Stage.State.NOT_STARTED
          : look(releases.isAsIssued());
    }
    return focus.areaOf(site).map(a -> of(stage, a, releases)).orElse(Stage.State.NOT_STARTED);
  }

  private static Stage.State of(Stage stage, FloorArea a, Releases releases) {
    return switch (stage) {
      case MEASURE -> look(a.doorways().stream().anyMatch(d -> d.wayIn()));
      case MARK -> a.marks().isEmpty() ? Stage.State.NOT_STARTED : Stage.State.DONE;
      case PREP -> a.machines().isEmpty() ? Stage.State.NOT_STARTED : Stage.State.DONE;
      case INLAY ->
          a.inlays().isEmpty() || !releases.isKnown()
              ? Stage.State.NOT_STARTED
              : look(a.inlays().stream().noneMatch(releases::changedOnDisk));
      case FINISH -> a.finish().coats().isEmpty() ? Stage.State.NOT_STARTED : Stage.State.DONE;
      case SHEETS -> Stage.State.NOT_STARTED;
    };
  }

  private static Stage.State look(boolean fine) {
    return fine ? Stage.State.DONE : Stage.State.NEEDS_A_LOOK;
  }
}
