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
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.model.input.TypedLength;
import slabwright.desk.shell.Controls;
import slabwright.site.Form;
import slabwright.site.Spot;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.words.Words;

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
          () ->
              rows.words()
                  .say(
                      "desk.cards.mark.point-fields.corners-drag-them-on-the",
                      now.get().spots().size()),
          "card-hint");
      return;
    }
    f.head();
    for (int i = 0; i < n; i++) {
      f.row(i);
    }
    rows.sentence(
        () ->
            f.sides
                ? rows.words().say("desk.cards.mark.point-fields.places-from-the-sites-bulge")
                : rows.words().say("desk.cards.mark.point-fields.places-from-the-sites"),
        "card-hint");
    Button more =
        Controls.button(
            rows.words().say("desk.cards.mark.point-fields.add-a-point"),
            "link",
            () -> set.accept(FormPoints.more(now.get())));
    more.setId("point-add");
    rows.getChildren().add(more);
  }

  private void head() {
    HBox line = new HBox(Controls.label("", "point-name"));
    Words words = rows.words();
    String right = words.say("desk.cards.mark.point-fields.right");
    String up = words.say("desk.cards.mark.point-fields.up");
    String bulge = words.say("desk.cards.mark.point-fields.bulge");
    for (String word : sides ? List.of(right, up, bulge) : List.of(right, up)) {
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
    Words words = rows.words();
    line.getChildren()
        .add(
            field(
                words.say("desk.cards.mark.point-fields.right-of-point", i + 1),
                "point-x-" + i,
                () -> spot(i).x(),
                v -> x(i, v)));
    line.getChildren()
        .add(
            field(
                words.say("desk.cards.mark.point-fields.up-of-point", i + 1),
                "point-y-" + i,
                () -> spot(i).y(),
                v -> y(i, v)));
    if (sides) {
      line.getChildren()
          .add(
              field(
                  rows.words().say("desk.cards.mark.point-fields.bulge-of-the-side-after", i + 1),
                  "point-bulge-" + i,
                  () -> FormPoints.rise(now.get(), i),
                  v -> set.accept(FormPoints.bulged(now.get(), i, v))));
    }
    Button away = Controls.button("×", "point-away", () -> leaveOut(i));
    Controls.named(
        away, rows.words().say("desk.cards.mark.point-fields.leave-point-out", i + 1), "");
    away.setDisable(now.get().spots().size() <= now.get().fewestSpots());
    line.getChildren().add(away);
    line.setAlignment(Pos.BASELINE_LEFT);
    line.getStyleClass().add("point-row");
    rows.getChildren().add(line);
  }

  private LengthField field(String name, String id, Supplier<Length> get, Consumer<Length> put) {
    TypedLength typed = rows.typed(LengthUse.PLACE);
    LengthField f =
        new LengthField(
            name,
            () -> LengthFormat.show(get.get(), rows.units()),
            s -> typed.read(s).map(v -> rows.taken(v, put)),
            rows.words());
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
