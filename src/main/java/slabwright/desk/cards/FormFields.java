package slabwright.desk.cards;

import java.util.function.Consumer;
import java.util.function.Supplier;
import slabwright.shape.Line;
import slabwright.site.Form;
import slabwright.site.Spot;
import slabwright.units.Length;
import slabwright.units.Quantity;

/** The fields of where a mark lies and how large it is. */
final class FormFields {
  private final FieldRows rows;
  private final Supplier<Form> now;
  private final Consumer<Form> set;

  private FormFields(FieldRows rows, Supplier<Form> now, Consumer<Form> set) {
    this.rows = rows;
    this.now = now;
    this.set = set;
  }

  static void add(FieldRows rows, Supplier<Form> now, Consumer<Form> set) {
    FormFields f = new FormFields(rows, now, set);
    Form form = now.get();
    if (form instanceof Form.Rectangle) {
      f.rectangle();
    } else if (form instanceof Form.RoundEnded) {
      f.roundEnded();
    } else if (form instanceof Form.Circle) {
      f.circle();
    } else if (form instanceof Form.Strip) {
      rows.length(
              "Width",
              () -> f.strip().width(),
              v -> set.accept(new Form.Strip(f.strip().path(), v)))
          .id("mark-width");
      rows.figure("Length", () -> f.length());
    } else if (form instanceof Form.Trace) {
      rows.figure("Length", () -> f.length());
    }
    if (form.spots().size() == 1) {
      f.place();
    }
  }

  private Form.Strip strip() {
    return (Form.Strip) now.get();
  }

  private String length() {
    Line path = new Line(now.get().spots().stream().map(Spot::vec).toList());
    return Quantity.run(path.length(), rows.units());
  }

  private void rectangle() {
    rows.length(
            "Length",
            () -> rect().length(),
            v -> rect(v, rect().width(), rect().corner(), rect().turn()))
        .id("mark-length");
    rows.length(
            "Width",
            () -> rect().width(),
            v -> rect(rect().length(), v, rect().corner(), rect().turn()))
        .id("mark-width");
    rows.length(
        "Round corners",
        () -> rect().corner(),
        v -> rect(rect().length(), rect().width(), v, rect().turn()));
    turn(() -> rect().turn(), v -> rect(rect().length(), rect().width(), rect().corner(), v));
  }

  private Form.Rectangle rect() {
    return (Form.Rectangle) now.get();
  }

  private void rect(Length length, Length width, Length corner, double turn) {
    set.accept(new Form.Rectangle(rect().middle(), length, width, corner, turn));
  }

  private Form.RoundEnded ended() {
    return (Form.RoundEnded) now.get();
  }

  private void roundEnded() {
    rows.length(
            "Length over all",
            () -> ended().length(),
            v ->
                set.accept(
                    new Form.RoundEnded(ended().middle(), v, ended().width(), ended().turn())))
        .id("mark-length");
    rows.length(
            "Width",
            () -> ended().width(),
            v ->
                set.accept(
                    new Form.RoundEnded(ended().middle(), ended().length(), v, ended().turn())))
        .id("mark-width");
    turn(
        () -> ended().turn(),
        v ->
            set.accept(
                new Form.RoundEnded(ended().middle(), ended().length(), ended().width(), v)));
  }

  private void circle() {
    rows.length(
            "Diameter",
            () -> Length.mm(2 * ((Form.Circle) now.get()).radius().mm()),
            v ->
                set.accept(
                    new Form.Circle(((Form.Circle) now.get()).middle(), Length.mm(v.mm() / 2))))
        .id("mark-diameter");
  }

  private void turn(Supplier<Double> get, Consumer<Double> put) {
    rows.number(
            "Turn",
            () -> Quantity.number(get.get(), get.get() % 1 == 0 ? 0 : 1) + "°",
            new NumberRange(-360, 360),
            put)
        .id("mark-turn");
  }

  /** Where its middle lies from the site's origin. */
  private void place() {
    rows.length("Middle, right", () -> spot().x(), v -> move(new Spot(v, spot().y())));
    rows.length("Middle, up", () -> spot().y(), v -> move(new Spot(spot().x(), v)));
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
