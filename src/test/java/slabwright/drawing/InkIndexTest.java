package slabwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Pattern;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

class InkIndexTest {
  private static final Pattern NUMBER = Pattern.compile("-?\\d+\\.\\d+(E-?\\d+)?");
  private static final Pen PEN = Pen.of(0.3, Palette.INK);

  private static Vec anywhere(Random random) {
    return new Vec(1000 * random.nextDouble(), 1000 * random.nextDouble());
  }

  /** Squares of every size apart from or over each other, inside one ring round all of them. */
  private static List<Ring> rings(Random random, int count) {
    List<Ring> rings = new ArrayList<>();
    rings.add(Ring.rectangle(-1, -1, 1001, 1001));
    for (int i = 1; i < count; i++) {
      Vec at = anywhere(random);
      double side = 1 + 40 * random.nextDouble();
      rings.add(Ring.rectangle(at.x(), at.y(), at.x() + side, at.y() + side));
    }
    return rings;
  }

  private static List<Ink> inks(Random random) {
    List<Line> lines = new ArrayList<>();
    for (int i = 0; i < 100; i++) {
      Vec at = anywhere(random);
      lines.add(Line.of(at, at.plus(new Vec(30 * random.nextGaussian(), 7))));
    }
    List<Ink> inks = new ArrayList<>();
    inks.add(new Fill(rings(random, 100), Palette.AMBER));
    for (HatchPattern pattern : HatchPattern.values()) {
      inks.add(new Hatch(rings(random, 40), pattern, PEN, 2.2, Vec.ZERO));
    }
    inks.add(new Stroke(rings(random, 50), lines, PEN));
    for (int i = 0; i < 30; i++) {
      inks.add(Symbol.of(Symbol.Kind.LOOK, anywhere(random), 3, Palette.RED));
      inks.add(Fill.of(Palette.GREY, rings(random, 2).get(1)));
    }
    return inks;
  }

  private static List<PrimitiveInk> shown(List<Ink> inks, Bounds window) {
    return Clip.of(new Drawing(CoordinateFrame.PAPER, window, inks), window);
  }

  @Property(tries = 10)
  void a_window_shows_of_what_reaches_into_it_what_it_shows_of_all(@ForAll long seed) {
    Random random = new Random(seed);
    List<Ink> inks = inks(random);
    InkIndex index = new InkIndex(inks);
    for (int i = 0; i < 3; i++) {
      Bounds window = Bounds.EMPTY.including(anywhere(random)).grown(10 + 40 * random.nextDouble());
      String near = shown(index.near(window.grown(10)), window).toString();
      String all = shown(inks, window).toString();
      assertThat(NUMBER.matcher(near).replaceAll("n"))
          .isEqualTo(NUMBER.matcher(all).replaceAll("n"));
      List<Double> expected = numbers(all);
      List<Double> found = numbers(near);
      double off = 0;
      for (int k = 0; k < expected.size(); k++) {
        off = Math.max(off, Math.abs(found.get(k) - expected.get(k)));
      }
      assertThat(off).isLessThan(1e-9);
    }
  }

  /** A line of a hatch that ends beyond the window is cut at its side, from wherever it ends. */
  private static List<Double> numbers(String shown) {
    return NUMBER.matcher(shown).results().map(r -> Double.valueOf(r.group())).toList();
  }

  @Example
  void of_an_ink_with_many_rings_only_those_near_are_given() {
    List<Ring> rings = new ArrayList<>();
    for (int i = 0; i < 10_000; i++) {
      int x = i % 100 * 10;
      int y = i / 100 * 10;
      rings.add(Ring.rectangle(x, y, x + 5, y + 5));
    }
    InkIndex index =
        new InkIndex(
            List.of(
                new Fill(rings, Palette.AMBER),
                new Hatch(rings, HatchPattern.RISING, PEN, 2, Vec.ZERO),
                Stroke.rings(PEN, rings)));
    Bounds window = new Bounds(98, 98, 117, 107);
    List<Ring> two = List.of(rings.get(1010), rings.get(1011));
    assertThat(index.near(window))
        .containsExactly(
            new Fill(two, Palette.AMBER),
            new Hatch(two, HatchPattern.RISING, PEN, 2, Vec.ZERO),
            Stroke.rings(PEN, two));
    assertThat(index.near(new Bounds(2000, 0, 3000, 10))).isEmpty();
  }
}
