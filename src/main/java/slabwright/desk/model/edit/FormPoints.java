package slabwright.desk.model.edit;

import java.util.ArrayList;
import java.util.List;
import slabwright.site.Form;
import slabwright.site.Form.CurvedCorner;
import slabwright.site.Spot;
import slabwright.units.Length;

/** Forms of several points with one of them moved, added or left out, or one side bulged. */
public final class FormPoints {
  private FormPoints() {}

  /** Whether a form has sides that can bulge. */
  public static boolean hasSides(Form form) {
    return form instanceof Form.Polygon || form instanceof Form.Curved;
  }

  /** How high the side after a point rises over its chord, to the right of travel. */
  public static Length rise(Form form, int index) {
    return form instanceof Form.Curved c && index < c.corners().size()
        ? c.corners().get(index).rise()
        : Length.ZERO;
  }

  /** The form with a point elsewhere; a form of one point stays as it is. */
  public static Form moved(Form form, int index, Spot to) {
    if (form instanceof Form.Curved c) {
      List<CurvedCorner> corners = new ArrayList<>(c.corners());
      corners.set(index, new CurvedCorner(to, corners.get(index).rise()));
      return new Form.Curved(corners);
    }
    List<Spot> next = new ArrayList<>(form.spots());
    next.set(index, to);
    return of(form, next);
  }

  /** The form with one more point after another one; both sides made of it are straight. */
  public static Form split(Form form, int after, Spot at) {
    if (form instanceof Form.Curved c) {
      List<CurvedCorner> corners = new ArrayList<>(c.corners());
      corners.set(after, new CurvedCorner(corners.get(after).at(), Length.ZERO));
      corners.add(after + 1, new CurvedCorner(at, Length.ZERO));
      return plain(corners);
    }
    List<Spot> next = new ArrayList<>(form.spots());
    next.add(after + 1, at);
    return of(form, next);
  }

  /** One more point: halfway along the closing side, or a step beyond the end of a path. */
  public static Form more(Form form) {
    List<Spot> s = form.spots();
    int last = s.size() - 1;
    Spot end = s.get(last);
    Spot at =
        hasSides(form)
            ? Spot.of(end.vec().towards(s.get(0).vec(), 0.5))
            : Spot.of(s.get(last - 1).vec().towards(end.vec(), 1.5));
    return split(form, last, at);
  }

  public static Form without(Form form, int index) {
    if (form instanceof Form.Curved c) {
      List<CurvedCorner> corners = new ArrayList<>(c.corners());
      corners.remove(index);
      return plain(corners);
    }
    List<Spot> next = new ArrayList<>(form.spots());
    next.remove(index);
    return of(form, next);
  }

  /** The form with the side after a point bulged; a polygon that has an arc is a curved one. */
  public static Form bulged(Form form, int index, Length rise) {
    List<CurvedCorner> corners = new ArrayList<>();
    for (int i = 0; i < form.spots().size(); i++) {
      corners.add(new CurvedCorner(form.spots().get(i), i == index ? rise : rise(form, i)));
    }
    return hasSides(form) ? plain(corners) : form;
  }

  /** Without any arc it is a polygon. */
  private static Form plain(List<CurvedCorner> corners) {
    boolean straight = corners.stream().allMatch(c -> c.rise().mm() == 0);
    return straight && corners.size() > 2
        ? new Form.Polygon(corners.stream().map(CurvedCorner::at).toList())
        : new Form.Curved(corners);
  }

  private static Form of(Form form, List<Spot> points) {
    if (form instanceof Form.Polygon) {
      return new Form.Polygon(points);
    }
    if (form instanceof Form.Strip s) {
      return new Form.Strip(points, s.width());
    }
    return form instanceof Form.Trace ? new Form.Trace(points) : form;
  }
}
