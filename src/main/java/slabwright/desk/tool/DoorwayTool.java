package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.edit.NewIds;
import slabwright.desk.model.edit.Walls;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.drawing.Ink;
import slabwright.shape.Line;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.edit.OutlineEdit;
import slabwright.units.Length;
import slabwright.units.Parsed;

/** Sets a doorway into a wall; its width can be typed before, its offset after. */
public final class DoorwayTool implements Tool {
  private final DeskContext bench;
  private final PlanLookup shown;
  private Length width = Length.feet(3);
  private Optional<Found> found = Optional.empty();

  private record Found(int wall, double offset, Line line) {}

  public DoorwayTool(DeskContext bench, PlanLookup shown) {
    this.bench = bench;
    this.shown = shown;
  }

  @Override
  public String prompt() {
    return "Type a width, then click on a wall; drag along it to adjust.";
  }

  @Override
  public Optional<String> entry() {
    return Optional.of("Width");
  }

  @Override
  public String standing() {
    return new OverlayScale(1, bench.desk().site().units()).length(width.mm()) + " wide";
  }

  @Override
  public Optional<String> type(String line) {
    Parsed<Length> read = Length.parse(line);
    if (read instanceof Parsed.Bad<Length> bad) {
      return Optional.of(bad.why());
    }
    width = read.orThrow();
    return Optional.empty();
  }

  @Override
  public void hover(Touch t) {
    found = shown.picture().flatMap(p -> find(p, t));
  }

  private Optional<Found> find(FloorPicture p, Touch t) {
    for (int i = 0; i < p.shape().pieces().size(); i++) {
      Line wall = p.shape().pieces().get(i);
      if (SegmentGeometry.distance(wall, t.raw()) <= 1.5 * t.reach()) {
        double most = Math.max(0, wall.length() - width.mm());
        double at = Walls.along(wall, t.at()) - width.mm() / 2;
        return Optional.of(new Found(i, Math.max(0, Math.min(most, at)), wall));
      }
    }
    return Optional.empty();
  }

  @Override
  public void press(Touch t) {
    hover(t);
    Optional<FloorPicture> p = shown.picture();
    if (p.isEmpty() || found.isEmpty()) {
      return;
    }
    Found f = found.get();
    String id = NewIds.doorway(p.get().area());
    boolean first = p.get().area().doorways().isEmpty();
    String name = first ? "main doors" : "doorway " + (p.get().area().doorways().size() + 1);
    Doorway d = new Doorway(id, name, f.wall(), Length.mm(f.offset()), width, first);
    if (bench.desk().push(new OutlineEdit.PutDoorway(p.get().area().id(), d)).isOk()) {
      bench.focus().select(new PlanItem.OfDoorway(id));
    }
  }

  @Override
  public List<Ink> over(OverlayScale paper) {
    List<Ink> inks = new ArrayList<>();
    found.ifPresent(
        f -> {
          Vec a = f.line().points().get(0);
          Vec way = f.line().points().get(f.line().points().size() - 1).minus(a).unit();
          Vec from = a.plus(way.times(f.offset()));
          Vec to = from.plus(way.times(width.mm()));
          inks.add(OverlayInks.line(List.of(from, to)));
          inks.addAll(OverlayInks.handle(from, paper));
          inks.addAll(OverlayInks.handle(to, paper));
          if (f.offset() > paper.mm() * 8) {
            inks.add(OverlayInks.length(a, from, paper));
          }
        });
    return inks;
  }
}
