package slabwright.drawing;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * Lines drawn with one pen.
 *
 * @param rings closed chains
 * @param lines open chains; one of two equal points is a dot when the pen is round
 */
public record Stroke(List<Ring> rings, List<Line> lines, Pen pen) implements PrimitiveInk {
  public Stroke {
    rings = List.copyOf(rings);
    lines = List.copyOf(lines);
  }

  public static Stroke line(Pen pen, Vec... points) {
    return new Stroke(List.of(), List.of(Line.of(points)), pen);
  }

  public static Stroke lines(Pen pen, List<Line> lines) {
    return new Stroke(List.of(), lines, pen);
  }

  public static Stroke rings(Pen pen, List<Ring> rings) {
    return new Stroke(rings, List.of(), pen);
  }

  public static Stroke outline(Pen pen, Region region) {
    return rings(pen, region.rings());
  }

  @Override
  public Stroke placed(View view) {
    return new Stroke(
        rings.stream().map(r -> r.map(view.map())).toList(),
        lines.stream().map(l -> l.map(view.map())).toList(),
        pen);
  }

  @Override
  public void paintOn(Painter painter) {
    painter.stroke(this);
  }

  @Override
  public Bounds reach() {
    List<Vec> all = new ArrayList<>();
    rings.forEach(r -> all.addAll(r.points()));
    lines.forEach(l -> all.addAll(l.points()));
    return Bounds.of(all);
  }
}
