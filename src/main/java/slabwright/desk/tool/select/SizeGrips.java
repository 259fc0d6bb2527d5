package slabwright.desk.tool.select;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import slabwright.desk.tool.Tool.Drag;
import slabwright.desk.tool.Touch;
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.Spot;
import slabwright.site.edit.Edit;
import slabwright.units.Length;

/** Grips of a rectangle, a round-ended form or a circle: the side or corner across stays put. */
final class SizeGrips {
  private static final double SMALLEST = 10;

  private final Form form;
  private final double mm;
  private final Function<Form, Optional<Edit>> put;

  /**
   * Grips of a form about its middle.
   *
   * @param mm site millimetres to one millimetre of screen paper
   * @param put the edit that gives the mark another form
   */
  SizeGrips(Form form, double mm, Function<Form, Optional<Edit>> put) {
    this.form = form;
    this.mm = mm;
    this.put = put;
  }

  List<Grip> all() {
    if (form instanceof Form.Rectangle r) {
      return box(new Box(r.middle().vec(), r.length().mm(), r.width().mm(), r.turn()));
    }
    if (form instanceof Form.RoundEnded r) {
      return box(new Box(r.middle().vec(), r.length().mm(), r.width().mm(), r.turn()));
    }
    return form instanceof Form.Circle c ? rim(c) : List.of();
  }

  private record Box(Vec middle, double length, double width, double turn) {
    Vec along() {
      double a = Math.toRadians(turn);
      return new Vec(Math.cos(a), Math.sin(a));
    }

    Vec at(int x, int y) {
      Vec u = along();
      return middle.plus(u.times(x * length / 2)).plus(u.left().times(y * width / 2));
    }

    /** The box with one corner or side where the touch is; a 0 leaves that size as it is. */
    Box dragged(int x, int y, Vec to) {
      Vec u = along();
      Vec d = to.minus(at(-x, -y));
      Vec across =
          u.times(x == 0 ? 0 : d.dot(u)).plus(u.left().times(y == 0 ? 0 : d.dot(u.left())));
      double l = x == 0 ? length : Math.max(SMALLEST, Math.abs(d.dot(u)));
      double w = y == 0 ? width : Math.max(SMALLEST, Math.abs(d.dot(u.left())));
      return new Box(at(-x, -y).plus(across.times(0.5)), l, w, turn);
    }
  }

  private List<Grip> box(Box b) {
    List<Grip> grips = new ArrayList<>();
    for (int x = -1; x <= 1; x++) {
      for (int y = -1; y <= 1; y++) {
        boolean corner = x != 0 && y != 0;
        boolean room = (x == 0 ? b.length() : b.width()) > 9 * mm;
        if (corner || (room && (x != 0 || y != 0))) {
          grips.add(grip(b, x, y));
        }
      }
    }
    return grips;
  }

  private Grip grip(Box b, int x, int y) {
    return Grip.square(
        b.at(x, y),
        new Drag() {
          @Override
          public Optional<Edit> to(Touch t) {
            return put.apply(with(b.dragged(x, y, t.at())));
          }

          @Override
          public Optional<Vec> anchor() {
            return Optional.of(b.at(-x, -y));
          }
        });
  }

  private Form with(Box b) {
    Spot middle = Spot.of(b.middle());
    Length l = Length.mm(b.length());
    Length w = Length.mm(b.width());
    if (form instanceof Form.Rectangle r) {
      return new Form.Rectangle(middle, l, w, r.corner(), b.turn());
    }
    return b.length() >= b.width()
        ? new Form.RoundEnded(middle, l, w, b.turn())
        : new Form.RoundEnded(middle, w, l, b.turn() + 90);
  }

  private List<Grip> rim(Form.Circle c) {
    Vec mid = c.middle().vec();
    double r = c.radius().mm();
    return List.of(new Vec(r, 0), new Vec(0, r), new Vec(-r, 0), new Vec(0, -r)).stream()
        .map(
            v ->
                Grip.square(
                    mid.plus(v),
                    t ->
                        put.apply(
                            new Form.Circle(
                                c.middle(),
                                Length.mm(Math.max(SMALLEST / 2, mid.distanceTo(t.at())))))))
        .toList();
  }
}
