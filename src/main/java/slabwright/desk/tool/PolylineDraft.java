package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.model.input.TypedLength;
import slabwright.desk.model.input.TypedSpot;
import slabwright.drawing.Ink;
import slabwright.shape.Vec;
import slabwright.site.Spot;
import slabwright.units.BareUnit;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/** Points being set one after the other, and the place under the pointer. */
public final class PolylineDraft {
  private final TypedLength legs;
  private final TypedLength places;
  private final List<Vec> points = new ArrayList<>();
  private Vec tip = Vec.ZERO;
  private Optional<Vec> way = Optional.empty();

  /**
   * Without points.
   *
   * @param units those of the site
   */
  public PolylineDraft(Supplier<UnitSystem> units) {
    legs = new TypedLength(LengthUse.WALL, units);
    places = new TypedLength(LengthUse.PLACE, units);
  }

  /** The unit of a bare number. */
  public BareUnit bare() {
    return legs.bare();
  }

  /** What a line would be taken as; empty while it can't be read. */
  public Optional<String> meaning(String line) {
    return TypedSpot.isOne(line) ? TypedSpot.meaning(line, places) : legs.meaning(line);
  }

  public boolean isEmpty() {
    return points.isEmpty();
  }

  public int size() {
    return points.size();
  }

  public List<Vec> points() {
    return List.copyOf(points);
  }

  public Vec first() {
    return points.get(0);
  }

  public Vec last() {
    return points.get(points.size() - 1);
  }

  public Vec tip() {
    return tip;
  }

  public void hover(Vec at) {
    if (!at.equals(tip)) {
      way = Optional.empty();
    }
    tip = at;
  }

  /** An arrow key says which way a typed length goes. */
  public boolean steer(int right, int up) {
    way = Optional.of(new Vec(right, up)).filter(w -> !points.isEmpty());
    return way.isPresent();
  }

  public void add(Vec at) {
    tip = at;
    if (points.isEmpty() || last().distanceTo(at) > 1) {
      points.add(at);
    }
  }

  /** A typed place, or a leg of the typed length towards the pointer or the steered way. */
  public Optional<Message> typed(String line) {
    if (TypedSpot.isOne(line)) {
      Result<Spot> at = TypedSpot.read(line, places::read);
      if (at instanceof Result.Refused<Spot> refused) {
        return Optional.of(refused.message());
      }
      add(at.orThrow().vec());
      return Optional.empty();
    }
    Result<Length> read = legs.read(line);
    if (read instanceof Result.Refused<Length> refused) {
      return Optional.of(refused.message());
    }
    if (points.isEmpty()) {
      return Optional.of(Message.of("desk.tool.polyline.where-it-begins"));
    }
    if (way.isEmpty() && tip.distanceTo(last()) < 1) {
      return Optional.of(Message.of("desk.tool.polyline.point-the-way"));
    }
    Vec along = way.orElseGet(() -> tip.minus(last()).unit());
    add(last().plus(along.times(read.orThrow().mm())));
    return Optional.empty();
  }

  public boolean removeLast() {
    if (points.isEmpty()) {
      return false;
    }
    points.remove(points.size() - 1);
    return true;
  }

  public boolean clear() {
    boolean had = !points.isEmpty();
    points.clear();
    way = Optional.empty();
    return had;
  }

  public List<Ink> over(OverlayScale paper) {
    List<Ink> inks = new ArrayList<>();
    if (points.isEmpty()) {
      return inks;
    }
    List<Vec> all = new ArrayList<>(points);
    if (way.isEmpty()) {
      all.add(tip);
    }
    if (all.size() > 1) {
      inks.add(OverlayInks.line(all));
    }
    for (int i = 0; i + 1 < points.size(); i++) {
      inks.add(OverlayInks.length(points.get(i), points.get(i + 1), paper));
    }
    points.forEach(p -> inks.addAll(OverlayInks.handle(p, paper)));
    inks.addAll(
        way.isPresent()
            ? OverlayInks.ahead(last(), way.get(), paper)
            : OverlayInks.leg(last(), tip, paper));
    return inks;
  }
}
