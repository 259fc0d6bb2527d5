package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Ink;
import slabwright.shape.Vec;
import slabwright.units.Length;
import slabwright.units.Parsed;

/** Points being set one after the other, and the place under the pointer. */
final class Chain {
  private final List<Vec> points = new ArrayList<>();
  private Vec tip = Vec.ZERO;

  boolean isEmpty() {
    return points.isEmpty();
  }

  int size() {
    return points.size();
  }

  List<Vec> points() {
    return List.copyOf(points);
  }

  Vec first() {
    return points.get(0);
  }

  Vec last() {
    return points.get(points.size() - 1);
  }

  Vec tip() {
    return tip;
  }

  void hover(Vec at) {
    tip = at;
  }

  void add(Vec at) {
    tip = at;
    if (points.isEmpty() || last().distanceTo(at) > 1) {
      points.add(at);
    }
  }

  /** A leg of the typed length towards the pointer. */
  Optional<String> typed(String line) {
    Parsed<Length> read = Length.parse(line);
    if (read instanceof Parsed.Bad<Length> bad) {
      return Optional.of(bad.why());
    }
    if (points.isEmpty() || tip.distanceTo(last()) < 1) {
      return Optional.of("Point the way first, then type the length.");
    }
    add(last().plus(tip.minus(last()).unit().times(read.orThrow().mm())));
    return Optional.empty();
  }

  boolean removeLast() {
    if (points.isEmpty()) {
      return false;
    }
    points.remove(points.size() - 1);
    return true;
  }

  boolean clear() {
    boolean had = !points.isEmpty();
    points.clear();
    return had;
  }

  List<Ink> over(Paper paper) {
    List<Ink> inks = new ArrayList<>();
    if (points.isEmpty()) {
      return inks;
    }
    List<Vec> all = new ArrayList<>(points);
    all.add(tip);
    inks.add(Overlays.line(all));
    for (int i = 0; i + 1 < points.size(); i++) {
      inks.add(Overlays.length(points.get(i), points.get(i + 1), paper));
    }
    points.forEach(p -> inks.addAll(Overlays.handle(p, paper)));
    inks.addAll(Overlays.leg(last(), tip, paper));
    return inks;
  }
}
