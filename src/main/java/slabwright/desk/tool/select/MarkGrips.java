package slabwright.desk.tool.select;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import slabwright.desk.model.edit.FormPoints;
import slabwright.desk.tool.Tool.Drag;
import slabwright.desk.tool.Touch;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.Spot;
import slabwright.site.edit.Edit;
import slabwright.site.edit.MarkEdit;
import slabwright.units.Length;

/** Grips of a mark of several points: squares move points, dots bend sides or paths. */
final class MarkGrips {
  /** Sides shorter than this have no dot, mm of screen paper. */
  private static final double SHORT = 14;

  private final FloorArea area;
  private final Mark mark;
  private final double mm;

  /**
   * Grips of a mark.
   *
   * @param mm site millimetres to one millimetre of screen paper
   */
  MarkGrips(FloorArea area, Mark mark, double mm) {
    this.area = area;
    this.mark = mark;
    this.mm = mm;
  }

  List<Grip> all() {
    Form form = mark.form();
    if (form.spots().size() < 2) {
      return new SizeGrips(form, mm, this::put).all();
    }
    List<Grip> grips = new ArrayList<>();
    for (int i = 0; i < form.spots().size(); i++) {
      grips.add(point(i));
    }
    int sides = FormPoints.hasSides(form) ? form.spots().size() : form.spots().size() - 1;
    for (int i = 0; i < sides; i++) {
      if (at(i).distanceTo(at(i + 1)) > SHORT * mm) {
        grips.add(FormPoints.hasSides(form) ? bulge(i) : bend(i));
      }
    }
    if (form instanceof Form.Strip s) {
      grips.add(width(s));
    }
    return grips;
  }

  private Optional<Edit> put(Form next) {
    return Optional.of(new MarkEdit.Put(area.id(), mark.withForm(next)));
  }

  private Vec at(int i) {
    List<Spot> all = mark.form().spots();
    return all.get(i % all.size()).vec();
  }

  private Grip point(int i) {
    Vec before = at(i == 0 ? 1 : i - 1);
    return Grip.square(at(i), from(before, t -> FormPoints.moved(mark.form(), i, Spot.of(t.at()))));
  }

  /** A path gets one more point where the dot is dragged to. */
  private Grip bend(int i) {
    Vec mid = at(i).towards(at(i + 1), 0.5);
    return Grip.dot(mid, from(at(i), t -> FormPoints.split(mark.form(), i, Spot.of(t.at()))));
  }

  private Grip bulge(int i) {
    Bulge side = new Bulge(at(i), at(i + 1), FormPoints.rise(mark.form(), i).mm());
    return Grip.dot(
        side.top(), t -> put(FormPoints.bulged(mark.form(), i, side.to(side.top(), t))));
  }

  private Grip width(Form.Strip s) {
    Vec a = at(0);
    Vec left = at(1).minus(a).unit().left();
    Vec knob = a.towards(at(1), 0.3).plus(left.times(s.width().mm() / 2));
    return Grip.dot(
        knob,
        t -> {
          double half = Math.abs(t.raw().minus(a).dot(left));
          return put(new Form.Strip(s.path(), Length.mm(Bulge.round(2 * half))));
        });
  }

  private Drag from(Vec anchor, Function<Touch, Form> next) {
    return new Drag() {
      @Override
      public Optional<Edit> to(Touch t) {
        return put(next.apply(t));
      }

      @Override
      public Optional<Vec> anchor() {
        return Optional.of(anchor);
      }
    };
  }
}
