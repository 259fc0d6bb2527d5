package slabwright.drawing;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.Function;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.near.BoxIndex;

/**
 * Inks by where they lie, for a drawing of which one part after another is shown: a part is asked
 * for what can show on it, of one ink with many rings too. What {@link Clip} leaves of it is the
 * same as of all inks.
 */
public final class InkIndex {
  /** An ink of fewer rings and lines is given whole. */
  private static final int FEW = 8;

  private final List<Entry> entries = new ArrayList<>();
  private final BoxIndex<Integer> places = new BoxIndex<>();

  private record Entry(Ink ink, BoxIndex<Integer> rings, BoxIndex<Integer> lines) {}

  public InkIndex(List<? extends Ink> inks) {
    for (Ink ink : inks) {
      places.add(ink.reach(), entries.size());
      entries.add(
          new Entry(ink, index(rings(ink), Ring::bounds), index(lines(ink), InkIndex::bounds)));
    }
  }

  private static List<Ring> rings(Ink ink) {
    if (ink instanceof Fill f) {
      return f.rings();
    } else if (ink instanceof Hatch h) {
      return h.rings();
    }
    return ink instanceof Stroke s ? s.rings() : List.of();
  }

  private static List<Line> lines(Ink ink) {
    return ink instanceof Stroke s ? s.lines() : List.of();
  }

  private static Bounds bounds(Line line) {
    return Bounds.of(line.points());
  }

  private static <T> BoxIndex<Integer> index(List<T> things, Function<T, Bounds> bounds) {
    BoxIndex<Integer> index = new BoxIndex<>();
    for (int i = 0; i < things.size(); i++) {
      index.add(bounds.apply(things.get(i)), i);
    }
    return index;
  }

  /** What of the inks reaches into the box, in their order. */
  public List<Ink> near(Bounds box) {
    List<Ink> near = new ArrayList<>();
    for (int i : numbers(places, box)) {
      Entry e = entries.get(i);
      near.add(rings(e.ink).size() + lines(e.ink).size() < FEW ? e.ink : cut(e, box));
    }
    return near;
  }

  private static Ink cut(Entry e, Bounds box) {
    List<Ring> rings = chosen(rings(e.ink), numbers(e.rings, box));
    if (e.ink instanceof Fill f) {
      return new Fill(rings, f.colour());
    } else if (e.ink instanceof Hatch h) {
      return new Hatch(rings, h.pattern(), h.pen(), h.pitch(), h.origin());
    } else if (e.ink instanceof Stroke s) {
      return new Stroke(rings, chosen(s.lines(), numbers(e.lines, box)), s.pen());
    }
    return e.ink;
  }

  private static <T> List<T> chosen(List<T> things, List<Integer> numbers) {
    return numbers.stream().map(things::get).toList();
  }

  private static List<Integer> numbers(BoxIndex<Integer> index, Bounds box) {
    List<Integer> numbers = new ArrayList<>();
    index.any(
        box,
        i -> {
          numbers.add(i);
          return false;
        });
    Collections.sort(numbers);
    return numbers;
  }
}
