package slabwright.inlay.cutfile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.inlay.panel.RegistrationTick;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;

/**
 * The number of a registration tick, beside it, in single strokes: who lays the film finds the tick
 * of the same number on the floor.
 *
 * @param number of the tick, as it has on the floor
 * @param box its place on the panel, mm; as high as the figures
 */
public record PenNumber(int number, Bounds box) {
  /** As high as can be, and never less than 4 mm: read from a hand's distance, on the knees. */
  private static final double[] HEIGHTS = {5, 4};

  /** From the middle of the tick to the number, along both arms, mm: clear of its ring. */
  private static final double BESIDE = 3;

  /**
   * Between two arms of the tick, where it lies on the film, over no opening and, if there is such
   * a place, over nothing else that is drawn; so near to the tick that its own clearance from
   * openings holds up to three figures. Empty only where openings come nearer than that.
   *
   * @param tick its middle on the panel, mm
   * @param open what is weeded
   * @param film the whole panel
   * @param drawn what else the pen draws
   */
  static Optional<PenNumber> of(
      RegistrationTick t, Vec tick, Region open, Bounds film, List<Line> drawn) {
    List<PenNumber> free = new ArrayList<>();
    for (double height : HEIGHTS) {
      double width = StrokeLetters.width(String.valueOf(t.number()).length(), height);
      for (double x : new double[] {BESIDE, -BESIDE - width}) {
        for (double y : new double[] {BESIDE, -BESIDE - height}) {
          Vec at = tick.plus(new Vec(x, y));
          Bounds box = new Bounds(at.x(), at.y(), at.x() + width, at.y() + height);
          boolean onFilm = film.contains(at) && film.contains(new Vec(box.maxX(), box.maxY()));
          if (onFilm && !open.meets(Region.rectangle(box))) {
            free.add(new PenNumber(t.number(), box));
          }
        }
      }
    }
    return free.stream()
        .filter(n -> drawn.stream().noneMatch(Region.rectangle(n.box())::meets))
        .findFirst()
        .or(() -> free.stream().findFirst());
  }

  List<Line> strokes() {
    Vec corner = new Vec(box.minX(), box.minY());
    return StrokeLetters.lines(String.valueOf(number), corner, box.height());
  }
}
