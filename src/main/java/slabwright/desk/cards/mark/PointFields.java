package slabwright.desk.cards.mark;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.LengthField;
import slabwright.desk.model.edit.FormPoints;
import slabwright.desk.shell.Controls;
import slabwright.site.Form;
import slabwright.site.Spot;
import slabwright.units.Length;
import slabwright.units.LengthFormat;

/** One row a point of a form: right and up from the site's zero point, and how its side bulges. */
final class PointFields {
  /** Beyond this many points they are only dragged on the slab. */
  private static final int MOST = 14;

  private final FieldRows rows;
  private final Supplier<Form> now;
  private final Consumer<Form> set;
  private final boolean sides;

  private PointFields(FieldRows rows, Supplier<Form> now, Consumer<Form> set) {
    this.rows = rows;
    this.now = now;
    this.set = set;
    sides = FormPoints.hasSides(now.get());
  }

  static void add(FieldRows rows, Supplier<Form> now, Consumer<Form> set) {
    PointFields f = new PointFields(rows, now, set);
    int n = now.get().spots().size();
    if (n > MOST) {
      rows.sentence(
          () -> now.get().spots().size() + " corners; drag them on the slab.", "card-hint");
      return;
    }
    f.head();
    for (int i = 0; i < n; i++) {
      f.row(i);
    }
    rows.sentence(
        () ->
            f.sides
                ? "Places from the site's 0; bulge is how far the side to the next point arches."
                : "Places from the site's 0.",
        "card-hint");
    Button more =
        Controls.button("Add a point", "link", () -> set.accept(FormPoints.more(now.get())));
    more.setId("point-add");
    rows.getChildren().add(more);
  }

  private void head() {
    HBox line = new HBox(Controls.label("", "point-name"));
    List<String> words = sides ? List.of("Right", "Up", "Bulge") : List.of("Right", "Up");
    for (String word : words) {
      var label = Controls.label(word, "row-name");
      label.setMaxWidth(Double.MAX_VALUE);
      label.setPrefWidth(10);
      HBox.setHgrow(label, Priority.ALWAYS);
      line.getChildren().add(label);
    }
    line.getChildren().add(Controls.label("", "point-away"));
    line.getStyleClass().add("point-row");
    rows.getChildren().add(line);
  }

  private void row(int i) {
    HBox line = new HBox(Controls.label(String.valueOf(i + 1), "point-name"));
    String point = "Point " + (i + 1);
    line.getChildren()
        .add(field(point + ", right", "point-x-" + i, () -> spot(i).x(), v -> x(i, v)));
    line.getChildren().add(field(point + ", up", "point-y-" + i, () -> spot(i).y(), v -> y(i, v)));
    if (sides) {
      line.getChildren()
          .add(
              field(
                  "Bulge of the side after point " + (i + 1),
                  "point-bulge-" + i,
                  () -> FormPoints.rise(now.get(), i),
                  v -> set.accept(FormPoints.bulged(now.get(), i, v))));
    }
    Button away = Controls.button("×", "point-away", () -> leaveOut(i));
    Controls.named(away, "Leave point " + (i + 1) + " out", "");
    away.setDisable(now.get().spots().size() <= now.get().fewestSpots());
    line.getChildren().add(away);
    line.setAlignment(Pos.BASELINE_LEFT);
    line.getStyleClass().add("point-row");
    rows.getChildren().add(line);
  }

  private LengthField field(String name, String id, Supplier<Length> get, Consumer<Length> put) {
    LengthField f =
        new LengthField(
            name,
            () -> LengthFormat.show(get.get(), rows.units()),
            s -> Length.parse(s).map(v -> rows.taken(v, put)));
    f.narrow().id(id);
    HBox.setHgrow(f, Priority.ALWAYS);
    rows.follow(f);
    return f;
  }

  private Spot spot(int i) {
    List<Spot> all = now.get().spots();
    return i < all.size() ? all.get(i) : Spot.mm(0, 0);
  }

  private void x(int i, Length v) {
    set.accept(FormPoints.moved(now.get(), i, new Spot(v, spot(i).y())));
  }

  private void y(int i, Length v) {
    set.accept(FormPoints.moved(now.get(), i, new Spot(spot(i).x(), v)));
  }

  private void leaveOut(int i) {
    Optional.of(now.get())
        .filter(f -> f.spots().size() > f.fewestSpots())
        .ifPresent(f -> set.accept(FormPoints.without(f, i)));
  }
}
