package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.edit.NewIds;
import slabwright.desk.model.edit.Walls;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.model.input.TypedLength;
import slabwright.desk.model.input.TypedSpot;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.drawing.Ink;
import slabwright.shape.Line;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;
import slabwright.site.Doorway;
import slabwright.site.Spot;
import slabwright.site.edit.OutlineEdit;
import slabwright.units.BareUnit;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;

/**
 * Sets a doorway into a wall, where one clicks or at the wall nearest to a typed place; its width
 * can be typed before, its offset after.
 */
public final class DoorwayTool implements Tool {
  private final DeskContext bench;
  private final PlanLookup shown;
  private final TypedLength widths;
  private final TypedLength places;
  private Length width = Length.feet(3);
  private Optional<Found> found = Optional.empty();

  private record Found(int wall, double offset, Line line) {}

  public DoorwayTool(DeskContext bench, PlanLookup shown) {
    this.bench = bench;
    widths = new TypedLength(LengthUse.OPENING, () -> bench.desk().site().units());
    places = new TypedLength(LengthUse.PLACE, () -> bench.desk().site().units());
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
  public boolean takesPlaces() {
    return true;
  }

  @Override
  public Optional<String> meaning(String line) {
    return TypedSpot.isOne(line) ? TypedSpot.meaning(line, places) : widths.meaning(line);
  }

  @Override
  public Optional<Message> type(String line) {
    if (TypedSpot.isOne(line)) {
      return place(TypedSpot.read(line, places::read));
    }
    Result<Length> read = widths.read(line);
    if (read instanceof Result.Refused<Length> refused) {
      return Optional.of(refused.message());
    }
    width = read.orThrow();
    return Optional.empty();
  }

  /** Its middle comes to lie on the wall nearest to the place, no farther off than it is wide. */
  private Optional<Message> place(Result<Spot> at) {
    if (at instanceof Result.Refused<Spot> refused) {
      return Optional.of(refused.message());
    }
    Vec there = at.orThrow().vec();
    found = shown.picture().flatMap(p -> nearest(p, there));
    if (found.isEmpty()) {
      return Optional.of(Message.of("desk.tool.doorway.no-wall-there"));
    }
    put(found.get());
    found = Optional.empty();
    return bench.desk().refusal().map(Refusal::message);
  }

  private Optional<Found> nearest(FloorPicture p, Vec there) {
    return IntStream.range(0, p.shape().pieces().size())
        .boxed()
        .min(Comparator.comparingDouble(i -> distance(p, i, there)))
        .filter(i -> distance(p, i, there) <= width.mm())
        .map(i -> in(p, i, there));
  }

  private static double distance(FloorPicture p, int wall, Vec from) {
    return SegmentGeometry.distance(p.shape().pieces().get(wall), from);
  }

  @Override
  public void hover(Touch t) {
    found = shown.picture().flatMap(p -> find(p, t));
  }

  private Optional<Found> find(FloorPicture p, Touch t) {
    return IntStream.range(0, p.shape().pieces().size())
        .filter(i -> distance(p, i, t.raw()) <= 1.5 * t.reach())
        .mapToObj(i -> in(p, i, t.at()))
        .findFirst();
  }

  /** With its middle as near to a place as the wall allows. */
  private Found in(FloorPicture p, int wall, Vec at) {
    Line line = p.shape().pieces().get(wall);
    double most = Math.max(0, line.length() - width.mm());
    double from = Walls.along(line, at) - width.mm() / 2;
    return new Found(wall, Math.max(0, Math.min(most, from)), line);
  }

  @Override
  public void press(Touch t) {
    hover(t);
    found.ifPresent(this::put);
  }

  private void put(Found f) {
    Optional<FloorPicture> p = shown.picture();
    if (p.isEmpty()) {
      return;
    }
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
    List<Ink> inks = new ArrayList<>(OverlayInks.zero(paper));
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
