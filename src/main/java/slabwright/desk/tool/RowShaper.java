package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.FloorPicture;
import slabwright.desk.model.Segments;
import slabwright.desk.model.Walls;
import slabwright.drawing.Ink;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.shape.Line;
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.Spot;
import slabwright.units.Length;
import slabwright.units.Parsed;

/** A row of equal booths along a wall: drag along it; as many as fit are set. */
final class RowShaper implements Shaper {
  private final Shown shown;
  private final Sizes sizes;
  private Optional<Held> held = Optional.empty();

  private record Held(Line wall, boolean floorOnLeft, double from, double to) {}

  RowShaper(Shown shown, Sizes sizes) {
    this.shown = shown;
    this.sizes = sizes;
  }

  @Override
  public String prompt() {
    return "Drag along a wall; type 5' x 28\" to change the booth's size.";
  }

  @Override
  public List<Form> press(Touch t) {
    held = shown.picture().flatMap(p -> wall(p, t));
    return List.of();
  }

  private static Optional<Held> wall(FloorPicture p, Touch t) {
    for (Line wall : p.shape().pieces()) {
      if (Segments.distance(wall, t.at()) <= 2 * t.reach()) {
        double at = Walls.along(wall, t.at());
        return Optional.of(new Held(wall, p.shape().floorOnLeft(), at, at));
      }
    }
    return Optional.empty();
  }

  @Override
  public void drag(Touch t) {
    held =
        held.map(h -> new Held(h.wall(), h.floorOnLeft(), h.from(), Walls.along(h.wall(), t.at())));
  }

  @Override
  public List<Form> release(Touch t) {
    List<Form> made = held.map(this::forms).orElse(List.of());
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
    List<Form> row = new ArrayList<>();
    for (int i = 0; i < n; i++) {
      double along = h.from() + sign * (i * pitch + length / 2);
      Vec mid = a.plus(way.times(along)).plus(in.times(sizes.boothDepth().mm() / 2));
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
  public Optional<String> entry() {
    return Optional.of("Booth");
  }

  @Override
  public Typed type(String line) {
    Parsed<SizePair> read = SizePair.read(line);
    if (read instanceof Parsed.Bad<SizePair> bad) {
      return Typed.refused(bad.why());
    }
    sizes.setBooth(read.orThrow().first(), read.orThrow().second());
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
  public List<Ink> over(Paper paper) {
    return held.map(this::forms).orElse(List.of()).stream()
        .<Ink>map(f -> Stroke.outline(Pen.of(0.5, Overlays.LIVE), f.region(1)))
        .toList();
  }
}
