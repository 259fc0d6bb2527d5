package slabwright.desk;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.compute.SeamCosts;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.desk.model.scene.PaleFloor;
import slabwright.desk.model.scene.Pictures;
import slabwright.desk.model.scene.SeamGrip;
import slabwright.desk.tool.PlanLookup;
import slabwright.shape.Bounds;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.units.Message;

/** What is on the slab now, for tools. */
final class CurrentPlanLookup implements PlanLookup {
  private final DeskContext bench;
  private final Pictures pictures;
  private final SelectedAreaResults answers;
  private final SeamCosts costs;

  CurrentPlanLookup(
      DeskContext bench, Pictures pictures, SelectedAreaResults answers, SeamCosts costs) {
    this.costs = costs;
    this.bench = bench;
    this.pictures = pictures;
    this.answers = answers;
  }

  @Override
  public Optional<FloorPicture> picture() {
    return pictures.picture();
  }

  @Override
  public List<PaleFloor> others() {
    return pictures.others();
  }

  private List<Vec> corners(Inlay i) {
    return answers
        .inlay(i.id())
        .map(a -> a.blank(i))
        .filter(c -> !c.isEmpty())
        .orElseGet(() -> square(i));
  }

  private static List<Vec> square(Inlay i) {
    double r = i.width().mm() / 2;
    Vec m = i.middle().vec();
    return Ring.rectangle(m.x() - r, m.y() - r, m.x() + r, m.y() + r).points();
  }

  @Override
  public Optional<PlanItem> inlayAt(Vec p) {
    List<Inlay> all = bench.focus().area().map(FloorArea::inlays).orElse(List.of());
    for (int k = all.size() - 1; k >= 0; k--) {
      if (Region.of(new Ring(corners(all.get(k)))).contains(p)) {
        return Optional.of(new PlanItem.OfInlay(all.get(k).id()));
      }
    }
    return Optional.empty();
  }

  @Override
  public List<Vec> inlayCorners(String id) {
    return bench.focus().area().flatMap(a -> a.inlay(id)).map(this::corners).orElse(List.of());
  }

  @Override
  public List<SeamGrip> seams() {
    List<SeamGrip> all = new ArrayList<>();
    for (Inlay i : bench.focus().area().map(FloorArea::inlays).orElse(List.of())) {
      answers.inlay(i.id()).flatMap(a -> SeamGrip.of(a, i)).ifPresent(all::add);
    }
    return all;
  }

  @Override
  public Message seamCost(Inlay inlay) {
    return costs.words(inlay);
  }

  @Override
  public Optional<Bounds> inlayBounds(String id) {
    List<Vec> c = inlayCorners(id);
    return c.isEmpty() ? Optional.empty() : Optional.of(Bounds.of(c));
  }
}
