package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.edit.NewIds;
import slabwright.desk.model.edit.Walls;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.model.input.TypedLength;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.drawing.Ink;
import slabwright.shape.Line;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.edit.OutlineEdit;
import slabwright.units.BareUnit;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.Result;

/** Sets a doorway into a wall; its width can be typed before, its offset after. */
public final class DoorwayTool implements Tool {
  private final DeskContext bench;
  private final PlanLookup shown;
  private final TypedLength widths;
  private Length width = Length.feet(3);
  private Optional<Found> found = Optional.empty();

  private record Found(int wall, double offset, Line line) {}

  public DoorwayTool(DeskContext bench, PlanLookup shown) {
    this.bench = bench;
    widths = new TypedLength(LengthUse.OPENING, () -> bench.desk().site().units());
    this.shown = shown;
  }

  @Override
  public Message prompt() {
    return Message.of("desk.tool.doorway.type-a-width");
  }

  @Override
  public Optional<Message> entry() {
    return Optional.of(Message.of("desk.tool.width"));
  }

  @Override
  public Optional<Message> standing() {
    return Optional.of(
        Message.of("desk.tool.wide", LengthFormat.show(width.mm(), bench.desk().site().units())));
  }

  @Override
  public Optional<BareUnit> bare() {
    return Optional.of(widths.bare());
  }

  @Override
  public Optional<String> meaning(String line) {
    return widths.meaning(line);
  }

  @Override
  public Optional<Message> type(String line) {
    Result<Length> read = widths.read(line);
    if (read instanceof Result.Refused<Length> refused) {
      return Optional.of(refused.message());
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
    int number = p.get().area().doorways().size() + 1;
    String name =
        bench
            .words()
            .say(
                first
                    ? Message.of("desk.tool.doorway.main-doors")
                    : Message.of("desk.tool.doorway.numbered", number));
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
