package slabwright.desk.cards.finish;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.layout.VBox;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.NumberRange;
import slabwright.desk.model.Desk;
import slabwright.desk.model.edit.SlabChange;
import slabwright.desk.shell.Controls;
import slabwright.site.MoistureReading;
import slabwright.site.MoistureReading.Test;
import slabwright.site.Slab;
import slabwright.units.QuantityFormat;

/** The moisture readings of a slab: by which test, what it read, where. */
final class MoistureFields extends VBox {
  private final Supplier<Slab> now;
  private final Consumer<Slab> set;
  private final FieldRows rows;
  private int shown = -1;

  MoistureFields(Desk desk, Supplier<Slab> now, Consumer<Slab> set) {
    this.now = now;
    this.set = set;
    rows = new FieldRows(desk);
    var add = Controls.button("Add a moisture reading", "link", this::add);
    add.setId("moisture-add");
    getChildren().addAll(rows, add);
    setSpacing(6);
  }

  private void add() {
    set.accept(SlabChange.readAlso(now.get(), new MoistureReading(Test.F2170, 75, "")));
  }

  /** Each test with the range that its readings can lie in. */
  private static String word(Test t) {
    return switch (t) {
      case F2170 -> "% RH in the slab (F2170)";
      case F1869 -> "lb per 1000 sq ft (F1869)";
      case D4263 -> "plastic sheet (D4263)";
    };
  }

  private static NumberRange range(Test t) {
    return switch (t) {
      case F2170 -> new NumberRange(0, 100);
      case F1869 -> new NumberRange(0, 50);
      case D4263 -> new NumberRange(0, 1);
    };
  }

  private MoistureReading reading(int i) {
    List<MoistureReading> all = now.get().moisture();
    return i < all.size() ? all.get(i) : new MoistureReading(Test.F2170, 0, "");
  }

  private void put(int i, Test test, double value, String place) {
    double kept = Math.min(value, range(test).high());
    set.accept(SlabChange.read(now.get(), i, new MoistureReading(test, kept, place)));
  }

  private void fill() {
    rows.clear();
    for (int i = 0; i < now.get().moisture().size(); i++) {
      row(i);
    }
  }

  private void row(int i) {
    rows.choice(
            "Moisture " + (i + 1),
            List.of(Test.values()),
            MoistureFields::word,
            () -> reading(i).test(),
            t -> put(i, t, reading(i).value(), reading(i).place()))
        .setId("moisture-test-" + i);
    rows.text(
            "Reads",
            () -> text(reading(i)),
            s ->
                range(reading(i).test())
                    .read(plain(s))
                    .map(
                        v -> {
                          put(i, reading(i).test(), v, reading(i).place());
                          return v;
                        }))
        .id("moisture-value-" + i);
    rows.words(
            "Where",
            () -> reading(i).place(),
            v -> put(i, reading(i).test(), reading(i).value(), v))
        .id("moisture-place-" + i);
    var away =
        Controls.button(
            "Leave this reading out",
            "link",
            () -> set.accept(SlabChange.withoutReading(now.get(), i)));
    rows.getChildren().add(away);
  }

  /** The sheet test says dry or damp; the others a number. */
  private static String text(MoistureReading r) {
    return r.test() == Test.D4263
        ? r.value() > 0 ? "damp" : "dry"
        : QuantityFormat.number(r.value(), r.value() % 1 == 0 ? 0 : 1);
  }

  private static String plain(String typed) {
    String word = typed.strip().toLowerCase(java.util.Locale.ROOT);
    return word.equals("dry") ? "0" : word.equals("damp") ? "1" : typed;
  }

  void refresh() {
    int n = now.get().moisture().size();
    if (n != shown) {
      shown = n;
      fill();
    }
    rows.refresh();
  }
}
