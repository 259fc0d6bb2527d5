package slabwright.desk.cards.mark;

import java.util.function.Consumer;
import java.util.function.Supplier;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.input.LengthUse;
import slabwright.shape.Line;
import slabwright.site.Form;
import slabwright.site.MarkType;
import slabwright.site.Spot;
import slabwright.units.Length;
import slabwright.units.QuantityFormat;

/** The fields of where a mark lies and how large it is. */
final class FormFields {
  private final FieldRows rows;
  private final Supplier<Form> now;
  private final Consumer<Form> set;
  private final LengthUse use;

  private FormFields(FieldRows rows, LengthUse use, Supplier<Form> now, Consumer<Form> set) {
    this.use = use;
    this.rows = rows;
    this.now = now;
    this.set = set;
  }

  static void add(FieldRows rows, MarkType type, Supplier<Form> now, Consumer<Form> set) {
    FormFields f = new FormFields(rows, LengthUse.ofSides(type), now, set);
    f.sizes();
    if (now.get().spots().size() == 1) {
      f.place();
    } else {
      PointFields.add(rows, now, set);
    }
  }

  private void sizes() {
    Form form = now.get();
    if (form instanceof Form.Rectangle) {
      new BoxFields(rows, use, now, set).rectangle();
    } else if (form instanceof Form.RoundEnded) {
      new BoxFields(rows, use, now, set).roundEnded();
    } else if (form instanceof Form.Circle) {
      circle();
    } else if (form instanceof Form.Strip) {
      rows.length(
              rows.words().say("desk.cards.mark.form-fields.width"),
              LengthUse.OPENING,
              () -> strip().width(),
              v -> set.accept(new Form.Strip(strip().path(), v)))
          .id("mark-width");
      rows.figure(rows.words().say("desk.cards.mark.form-fields.length"), this::length);
    } else if (form instanceof Form.Trace) {
      rows.figure(rows.words().say("desk.cards.mark.form-fields.length"), this::length);
    }
  }

  private Form.Strip strip() {
    return (Form.Strip) now.get();
  }

  private String length() {
    Line path = new Line(now.get().spots().stream().map(Spot::vec).toList());
    return QuantityFormat.run(path.length(), rows.units());
  }

  private void circle() {
    rows.length(
            rows.words().say("desk.cards.mark.form-fields.diameter"),
            LengthUse.OPENING,
            () -> Length.mm(2 * ((Form.Circle) now.get()).radius().mm()),
            v -> set.accept(new Form.Circle(spot(), Length.mm(v.mm() / 2))))
        .id("mark-diameter");
  }

  /** Where its middle lies from the site's zero point. */
  private void place() {
    rows.length(
            rows.words().say("desk.cards.mark.form-fields.middle-right"),
            LengthUse.PLACE,
            () -> spot().x(),
            v -> move(new Spot(v, spot().y())))
        .id("mark-x");
    rows.length(
            rows.words().say("desk.cards.mark.form-fields.middle-up"),
            LengthUse.PLACE,
            () -> spot().y(),
            v -> move(new Spot(spot().x(), v)))
        .id("mark-y");
  }

  private Spot spot() {
    return now.get().spots().get(0);
  }

  private void move(Spot to) {
    Form f = now.get();
    if (f instanceof Form.Rectangle r) {
      set.accept(new Form.Rectangle(to, r.length(), r.width(), r.corner(), r.turn()));
    } else if (f instanceof Form.RoundEnded r) {
      set.accept(new Form.RoundEnded(to, r.length(), r.width(), r.turn()));
    } else if (f instanceof Form.Circle c) {
      set.accept(new Form.Circle(to, c.radius()));
    } else if (f instanceof Form.Place) {
      set.accept(new Form.Place(to));
    }
  }
}
