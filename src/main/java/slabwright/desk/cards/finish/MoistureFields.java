package slabwright.desk.cards.finish;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.layout.VBox;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.NumberRange;
import slabwright.desk.model.DeskContext;
import slabwright.desk.shell.Controls;
import slabwright.site.MoistureReading;
import slabwright.site.MoistureReading.Test;
import slabwright.site.Slab;
import slabwright.units.QuantityFormat;
import slabwright.words.Words;

/** The moisture readings of a slab: by which test, what it read, where. */
final class MoistureFields extends VBox {
  private final Supplier<Slab> now;
  private final Consumer<Slab> set;
  private final FieldRows rows;
  private final Words words;
  private int shown = -1;

  MoistureFields(DeskContext bench, Supplier<Slab> now, Consumer<Slab> set) {
    this.now = now;
    this.set = set;
    rows = new FieldRows(bench);
    words = bench.words();
    var add =
        Controls.button(
            words.say("desk.cards.finish.moisture-fields.add-a-moisture-reading"),
            "link",
            this::add);
    add.setId("moisture-add");
    getChildren().addAll(rows, add);
    setSpacing(6);
  }

  private void add() {
    set.accept(SlabChange.readAlso(now.get(), new MoistureReading(Test.F2170, 75, "")));
  }

  /** Each test with the range that its readings can lie in. */
  private String word(Test t) {
    return switch (t) {
      case F2170 -> words.say("desk.cards.finish.moisture-fields.rh-in-the-slab-f");
      case F1869 -> words.say("desk.cards.finish.moisture-fields.lb-per-sq-ft-f");
      case D4263 -> words.say("desk.cards.finish.moisture-fields.plastic-sheet-d");
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
            words.say("desk.cards.finish.moisture-fields.moisture", i + 1),
            List.of(Test.values()),
            this::word,
            () -> reading(i).test(),
            t -> put(i, t, reading(i).value(), reading(i).place()))
        .setId("moisture-test-" + i);
    rows.text(
            words.say("desk.cards.finish.moisture-fields.reads"),
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
    rows.freeText(
            words.say("desk.cards.finish.moisture-fields.where"),
            () -> reading(i).place(),
            v -> put(i, reading(i).test(), reading(i).value(), v))
        .id("moisture-place-" + i);
    var away =
        Controls.button(
            words.say("desk.cards.finish.moisture-fields.leave-this-reading-out"),
            "link",
            () -> set.accept(SlabChange.withoutReading(now.get(), i)));
    rows.getChildren().add(away);
  }

  /** The sheet test says dry or damp; the others a number. */
  private String text(MoistureReading r) {
    return r.test() == Test.D4263
        ? r.value() > 0 ? damp() : dry()
        : QuantityFormat.number(r.value(), r.value() % 1 == 0 ? 0 : 1);
  }

  private String damp() {
    return words.say("desk.cards.finish.moisture-fields.damp");
  }

  private String dry() {
    return words.say("desk.cards.finish.moisture-fields.dry");
  }

  private String plain(String typed) {
    String word = typed.strip();
    return word.equalsIgnoreCase(dry()) ? "0" : word.equalsIgnoreCase(damp()) ? "1" : typed;
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
