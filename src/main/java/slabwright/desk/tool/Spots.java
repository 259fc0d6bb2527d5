package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import slabwright.site.Form;
import slabwright.site.Spot;

/** Forms with one of their points elsewhere. */
final class Spots {
  private Spots() {}

  static Form moved(Form form, int index, Spot to) {
    if (form instanceof Form.Polygon p) {
      return new Form.Polygon(with(p.corners(), index, to));
    }
    if (form instanceof Form.Strip s) {
      return new Form.Strip(with(s.path(), index, to), s.width());
    }
    if (form instanceof Form.Trace t) {
      return new Form.Trace(with(t.path(), index, to));
    }
    if (form instanceof Form.Curved c) {
      List<Form.CurvedCorner> corners = new ArrayList<>(c.corners());
      corners.set(index, new Form.CurvedCorner(to, corners.get(index).rise()));
      return new Form.Curved(corners);
    }
    return form;
  }

  private static List<Spot> with(List<Spot> spots, int index, Spot to) {
    List<Spot> next = new ArrayList<>(spots);
    next.set(index, to);
    return next;
  }
}
