package slabwright.floor;

import java.util.List;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;

/**
 * A line where the floor steps up or down. Machine reach takes it as passable; the step itself is
 * ground by hand.
 *
 * @param length of the line on the net floor, mm
 * @param height of the step, mm
 */
public record LevelStep(Mark mark, double length, double height) {
  /** Every level change of a floor, in the order of its marks. */
  public static List<LevelStep> of(FloorTakeoff t) {
    return t.area().marks().stream()
        .filter(m -> m.kind() instanceof MarkKind.LevelChange && m.form() instanceof Form.Trace)
        .map(m -> new LevelStep(m, EdgeTally.length(m, t.net()), height(m)))
        .toList();
  }

  private static double height(Mark m) {
    return Math.abs(((MarkKind.LevelChange) m.kind()).height().mm());
  }
}
