package slabwright.sheets.prep;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.shape.Vec;

/**
 * One numbered line of the hand-work list.
 *
 * @param words what it is
 * @param kind what it is without its own name: where many are the same, one row tells them all
 * @param edge length in mm, where it is an edge or runs along something
 * @param area of hand work in mm²
 * @param at the place on the site that the number stands by; empty for a sum of many places
 * @param inwards for an edge, the direction from it into the floor
 */
record HandWorkItem(
    String words,
    String kind,
    OptionalDouble edge,
    OptionalDouble area,
    Optional<Vec> at,
    Optional<Vec> inwards) {
  static HandWorkItem edge(
      String words, String kind, double length, double strip, Vec at, Vec inwards) {
    return new HandWorkItem(
        words,
        kind,
        OptionalDouble.of(length),
        OptionalDouble.of(strip),
        Optional.of(at),
        Optional.of(inwards));
  }

  static HandWorkItem piece(String words, String kind, double area, Vec at) {
    return new HandWorkItem(
        words,
        kind,
        OptionalDouble.empty(),
        OptionalDouble.of(area),
        Optional.of(at),
        Optional.empty());
  }

  static HandWorkItem sum(String words, double area) {
    return new HandWorkItem(
        words,
        words,
        OptionalDouble.empty(),
        OptionalDouble.of(area),
        Optional.empty(),
        Optional.empty());
  }

  /** Where the number would best stand: just inside the strip, along both sides of its middle. */
  List<Vec> candidates(slabwright.drawing.View view, double off) {
    if (at.isEmpty() || inwards.isEmpty()) {
      return List.of();
    }
    Vec p = view.onPaper(at.get());
    Vec in = view.onPaper(at.get().plus(inwards.get())).minus(p).unit();
    Vec along = in.left();
    return List.of(
        p.plus(in.times(off)),
        p.plus(in.times(off)).plus(along.times(off)),
        p.plus(in.times(off)).minus(along.times(off)),
        p.plus(in.times(off)).plus(along.times(2 * off)),
        p.plus(in.times(off)).minus(along.times(2 * off)),
        p.plus(in.times(1.6 * off)));
  }
}
