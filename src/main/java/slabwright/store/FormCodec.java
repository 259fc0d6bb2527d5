package slabwright.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Optional;
import slabwright.site.Form;
import slabwright.site.Spot;
import slabwright.units.Length;

/** Forms of marks in the plan file. */
final class FormCodec {
  /** The words of the field "shape". */
  enum Shape {
    POLYGON,
    CURVED,
    RECTANGLE,
    ROUND_ENDED,
    CIRCLE,
    STRIP,
    TRACE,
    PLACE
  }

  private FormCodec() {}

  static Form read(FieldReader f) {
    Optional<Shape> shape = f.wordNeeded("shape", Shape.class);
    Form form = shape.map(s -> read(s, f)).orElse(new Form.Place(Spot.mm(0, 0)));
    if (shape.isPresent()) {
      f.reportUnknown();
    }
    return form;
  }

  private static Form read(Shape shape, FieldReader f) {
    return switch (shape) {
      case POLYGON -> new Form.Polygon(f.spots("corners"));
      case CURVED ->
          new Form.Curved(
              f.list(
                  "corners",
                  c ->
                      Optional.of(
                          new Form.CurvedCorner(c.spot("at"), c.lengthOr("rise", Length.ZERO)))));
      case RECTANGLE ->
          new Form.Rectangle(
              f.spot("middle"),
              f.length("length"),
              f.length("width"),
              f.lengthOr("corner", Length.ZERO),
              f.numberOr("turn", 0));
      case ROUND_ENDED ->
          new Form.RoundEnded(
              f.spot("middle"), f.length("length"), f.length("width"), f.numberOr("turn", 0));
      case CIRCLE -> new Form.Circle(f.spot("middle"), f.length("radius"));
      case STRIP -> new Form.Strip(f.spots("path"), f.length("width"));
      case TRACE -> new Form.Trace(f.spots("path"));
      case PLACE -> new Form.Place(f.spot("at"));
    };
  }

  static void write(Form form, ObjectNode o) {
    if (form instanceof Form.Polygon p) {
      FieldWriter.spots(shape(o, Shape.POLYGON), "corners", p.corners());
    } else if (form instanceof Form.Curved c) {
      FieldWriter.list(shape(o, Shape.CURVED), "corners", c.corners(), FormCodec::corner);
    } else if (form instanceof Form.Rectangle r) {
      FieldWriter.spot(shape(o, Shape.RECTANGLE), "middle", r.middle());
      FieldWriter.length(o, "length", r.length());
      FieldWriter.length(o, "width", r.width());
      FieldWriter.length(o, "corner", r.corner());
      o.put("turn", r.turn());
    } else if (form instanceof Form.RoundEnded r) {
      FieldWriter.spot(shape(o, Shape.ROUND_ENDED), "middle", r.middle());
      FieldWriter.length(o, "length", r.length());
      FieldWriter.length(o, "width", r.width());
      o.put("turn", r.turn());
    } else if (form instanceof Form.Circle c) {
      FieldWriter.spot(shape(o, Shape.CIRCLE), "middle", c.middle());
      FieldWriter.length(o, "radius", c.radius());
    } else {
      line(form, o);
    }
  }

  private static void line(Form form, ObjectNode o) {
    if (form instanceof Form.Strip s) {
      FieldWriter.spots(shape(o, Shape.STRIP), "path", s.path());
      FieldWriter.length(o, "width", s.width());
    } else if (form instanceof Form.Trace t) {
      FieldWriter.spots(shape(o, Shape.TRACE), "path", t.path());
    } else if (form instanceof Form.Place p) {
      FieldWriter.spot(shape(o, Shape.PLACE), "at", p.at());
    }
  }

  private static ObjectNode shape(ObjectNode o, Shape shape) {
    return o.put("shape", EnumWords.of(shape));
  }

  private static void corner(Form.CurvedCorner c, ObjectNode o) {
    FieldWriter.spot(o, "at", c.at());
    FieldWriter.length(o, "rise", c.rise());
  }
}
