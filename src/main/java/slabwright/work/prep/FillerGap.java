package slabwright.work.prep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.floor.FloorTakeoff;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.MarkType;
import slabwright.site.Spot;

/**
 * A joint, crack or spall to fill: length × width × depth.
 *
 * @param run its length in mm, for the hours; half the way round a spall
 * @param mm3 its volume
 */
public record FillerGap(String name, MarkType kind, double run, double mm3) {
  /** Flattening of curved spalls, mm. */
  private static final double TOLERANCE = 0.5;

  /** A straight gap. */
  public static FillerGap of(
      String name, MarkType kind, double length, double width, double depth) {
    return new FillerGap(name, kind, length, length * width * depth);
  }

  /** All gaps marked on a floor area, as far as they lie on its net floor. */
  public static List<FillerGap> of(FloorTakeoff floor) {
    List<FillerGap> gaps = new ArrayList<>();
    floor
        .area()
        .marks()
        .forEach(m -> of(m, floor.net()).filter(g -> g.run() > 0).ifPresent(gaps::add));
    return List.copyOf(gaps);
  }

  /** Of one mark, as far as it lies on the net floor; empty for what is not filled. */
  public static Optional<FillerGap> of(Mark m, Region net) {
    if (m.kind() instanceof MarkKind.Joint j) {
      return Optional.of(gap(m, net, j.width().mm(), j.depth().mm()));
    }
    if (m.kind() instanceof MarkKind.Crack c) {
      return Optional.of(gap(m, net, c.width().mm(), c.depth().mm()));
    }
    if (m.kind() instanceof MarkKind.Spall s) {
      Region r = m.form().region(TOLERANCE).intersect(net);
      return Optional.of(
          new FillerGap(
              m.name(), m.kind().type(), r.boundaryLength() / 2, r.area() * s.depth().mm()));
    }
    return Optional.empty();
  }

  private static FillerGap gap(Mark m, Region net, double width, double depth) {
    return of(m.name(), m.kind().type(), length(m.form(), net), width, depth);
  }

  /** A line's length on the floor; for a drawn area half the way round it. */
  private static double length(Form form, Region net) {
    if (form instanceof Form.Trace || form instanceof Form.Strip) {
      return net.clip(new Line(form.spots().stream().map(Spot::vec).toList())).stream()
          .mapToDouble(Line::length)
          .sum();
    }
    return form.region(TOLERANCE).intersect(net).boundaryLength() / 2;
  }
}
