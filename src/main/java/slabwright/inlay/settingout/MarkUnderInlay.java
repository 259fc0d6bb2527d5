package slabwright.inlay.settingout;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.Spot;

/**
 * A mark that lies under an inlay: dye takes differently on it, or the film does not lie flat.
 *
 * @param mark what it is
 * @param area of it under the dyed openings, mm²; 0 for a line
 * @param length of it under the blank, mm; 0 for an area
 * @param stands whether it stands on the floor, so that the blank cannot lie there
 */
public record MarkUnderInlay(Mark mark, double area, double length, boolean stands) {
  /**
   * Everything under an inlay.
   *
   * @param blank on the site
   * @param openings on the site
   * @param tolerance for arcs, mm
   */
  public static List<MarkUnderInlay> of(
      List<Mark> marks, Region blank, Region openings, double tolerance) {
    List<MarkUnderInlay> found = new ArrayList<>();
    for (Mark mark : marks) {
      boolean stands = !mark.kind().type().isFloor();
      Region region = mark.form().region(tolerance);
      if (!region.isEmpty() && region.intersect(blank).area() > 0) {
        found.add(new MarkUnderInlay(mark, region.intersect(openings).area(), 0, stands));
      } else if (mark.form() instanceof Form.Trace trace) {
        double length = blank.clip(line(trace)).stream().mapToDouble(Line::length).sum();
        if (length > 0) {
          found.add(new MarkUnderInlay(mark, 0, length, stands));
        }
      }
    }
    return found;
  }

  private static Line line(Form.Trace trace) {
    return new Line(trace.path().stream().map(Spot::vec).toList());
  }
}
