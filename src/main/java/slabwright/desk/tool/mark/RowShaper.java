package slabwright.desk.tool.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Supplier;
import slabwright.desk.model.edit.Walls;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.model.input.TypedLength;
import slabwright.desk.model.scene.FloorPicture;
import slabwright.desk.tool.OverlayInks;
import slabwright.desk.tool.OverlayScale;
import slabwright.desk.tool.PlanLookup;
import slabwright.desk.tool.Touch;
import slabwright.drawing.Ink;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.shape.Line;
import slabwright.shape.SegmentGeometry;
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.Spot;
import slabwright.units.BareUnit;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/** A row of equal booths along a wall: drag along it; as many as fit are set. */
final class RowShaper implements Shaper {
  private final PlanLookup shown;
  private final RecentSizes sizes;
  private final TypedLength lengths;
  private Optional<Held> held = Optional.empty();

  private OptionalInt wall = OptionalInt.empty();

  private record Held(int index, Line wall, boolean floorOnLeft, double from, double to) {
    Held to(double along) {
      return new Held(index, wall, floorOnLeft, from, along);
    }
  }

  RowShaper(PlanLookup shown, RecentSizes sizes, Supplier<UnitSystem> units) {
    lengths = new TypedLength(LengthUse.OPENING, units);
    this.shown = shown;
    this.sizes = sizes;
  }

  @Override
  public Message prompt() {
    return Message.of("desk.tool.mark.drag-along-a-wall");
  }

  @Override
  public List<Form> press(Touch t) {
    held = shown.picture().flatMap(p -> wall(p, t));
    return List.of();
  }

  private static Optional<Held> wall(FloorPicture p, Touch t) {
    for (int i = 0; i < p.shape().pieces().size(); i++) {
      Line wall = p.shape().pieces().get(i);
      if (SegmentGeometry.distance(wall, t.at()) <= 2 * t.reach()) {
        double at = Walls.along(wall, t.at());
        return Optional.of(new Held(i, wall, p.shape().floorOnLeft(), at, at));
      }
    }
    return Optional.empty();
  }

  @Override
  public void drag(Touch t) {
    held = held.map(h -> h.to(Walls.along(h.wall(), t.at())));
  }

  @Override
  public List<Form> release(Touch t) {
    List<Form> made = held.map(this::forms).orElse(List.of());
    wall = held.map(h -> OptionalInt.of(h.index())).orElseGet(OptionalInt::empty);
    held = Optional.empty();
    return made;
  }

  private List<Form> forms(Held h) {
    double length = sizes.boothLength().mm();
    double pitch = length + sizes.boothGap().mm();
    double run = Math.abs(h.to() - h.from());
    int n = (int) Math.max(1, Math.floor((run + sizes.boothGap().mm() + 1) / pitch));
    Vec a = h.wall().points().get(0);
    Vec b = h.wall().points().get(h.wall().points().size() - 1);
    Vec way = b.minus(a).unit();
    Vec in = way.left().times(h.floorOnLeft() ? 1 : -1);
    double sign = h.to() >= h.from() ? 1 : -1;
    double out = sizes.boothOff().mm() + sizes.boothDepth().mm() / 2;
    List<Form> row = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double along = h.from() + sign * (i * pitch + length / 2);
      Vec mid = a.plus(way.times(along)).plus(in.times(out));
      row.add(
          new Form.Rectangle(
              Spot.of(mid),
              sizes.boothLength(),
              sizes.boothDepth(),
              Length.ZERO,
              Math.toDegrees(way.angle())));
    }
    return row;
  }

  @Override
  public void hover(Touch t) {
    // Nothing follows the pointer until a wall is held.
  }

  @Override
  public Optional<Message> entry() {
    return Optional.of(Message.of("desk.tool.mark.booth"));
  }

  @Override
  public Message example() {
    return Message.of("desk.tool.example.row");
  }

  @Override
  public OptionalInt wall() {
    return wall;
  }

  @Override
  public Optional<BareUnit> bare() {
    return Optional.of(lengths.bare());
  }

  @Override
  public Optional<String> meaning(String line) {
    return SizePair.meaning(line, lengths);
  }

  @Override
  public Typed type(String line) {
    Result<TypedRow> read = TypedRow.read(line, lengths::read);
    if (read instanceof Result.Refused<TypedRow> refused) {
      return Typed.refused(refused.message());
    }
    sizes.setRow(read.orThrow());
    return Typed.taken();
  }

  @Override
  public boolean stepBack() {
    return clear();
  }

  @Override
  public boolean clear() {
    boolean had = held.isPresent();
    held = Optional.empty();
    return had;
  }

  @Override
  public List<Ink> over(OverlayScale paper) {
    return held.map(this::forms).orElse(List.of()).stream()
        .<Ink>map(f -> Stroke.outline(Pen.of(0.5, OverlayInks.LIVE), f.region(1)))
        .toList();
  }
}
