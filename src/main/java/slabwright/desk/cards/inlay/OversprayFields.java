package slabwright.desk.cards.inlay;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.scene.layout.VBox;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.NumberRange;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.input.LengthUse;
import slabwright.site.Overspray;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.units.QuantityFormat;
import slabwright.words.Words;

/** How far mist lands beyond the openings: stated, or worked out from the nozzle. */
final class OversprayFields extends VBox {
  /** A first nozzle, common practice, no source: measure your own. */
  private static final Overspray.Fan FIRST =
      new Overspray.Fan(Length.inches(10), 80, Length.inches(6), Length.inches(4));

  private final Supplier<Overspray> now;
  private final Consumer<Overspray> set;
  private final Words words;
  private final FieldRows kind;
  private final FieldRows rows;
  private Class<?> shown = Void.class;

  OversprayFields(DeskContext bench, Supplier<Overspray> now, Consumer<Overspray> set) {
    this.now = now;
    this.set = set;
    words = bench.words();
    kind = new FieldRows(bench);
    rows = new FieldRows(bench);
    getChildren().addAll(kind, rows);
    setSpacing(7);
    kind.choice(
            words.say("desk.cards.inlay.overspray-fields.overspray"),
            List.of(false, true),
            fan ->
                fan
                    ? words.say("desk.cards.inlay.overspray-fields.from-the-nozzle")
                    : words.say("desk.cards.inlay.overspray-fields.stated"),
            () -> now.get() instanceof Overspray.Fan,
            fan -> set.accept(fan ? FIRST : new Overspray.Stated(Length.mm(now.get().reachMm()))))
        .setId("stencil-overspray");
  }

  private Overspray.Fan fan() {
    return now.get() instanceof Overspray.Fan f ? f : FIRST;
  }

  private void fan(Length height, double degrees, Length overrun, Length drift) {
    set.accept(new Overspray.Fan(height, degrees, overrun, drift));
  }

  private void stated() {
    rows.length(
            words.say("desk.cards.inlay.overspray-fields.overspray-reach"),
            LengthUse.MARGIN,
            () -> Length.mm(now.get().reachMm()),
            v -> set.accept(new Overspray.Stated(v)))
        .id("stencil-overspray-reach");
  }

  private void nozzle() {
    rows.length(
            words.say("desk.cards.inlay.overspray-fields.nozzle-height"),
            LengthUse.MARGIN,
            () -> fan().height(),
            v -> fan(v, fan().fanDegrees(), fan().overrun(), fan().drift()))
        .id("fan-height");
    rows.number(
            words.say("desk.cards.inlay.overspray-fields.angle-of-its-fan"),
            () ->
                QuantityFormat.number(fan().fanDegrees(), fan().fanDegrees() % 1 == 0 ? 0 : 1)
                    + "°",
            new NumberRange(0, 179),
            v -> fan(fan().height(), v, fan().overrun(), fan().drift()))
        .id("fan-degrees");
    rows.length(
            words.say("desk.cards.inlay.overspray-fields.strokes-run-past"),
            LengthUse.MARGIN,
            () -> fan().overrun(),
            v -> fan(fan().height(), fan().fanDegrees(), v, fan().drift()))
        .id("fan-overrun");
    rows.length(
            words.say("desk.cards.inlay.overspray-fields.drift-in-the-air"),
            LengthUse.MARGIN,
            () -> fan().drift(),
            v -> fan(fan().height(), fan().fanDegrees(), fan().overrun(), v))
        .id("fan-drift");
    rows.figure(
        words.say("desk.cards.inlay.overspray-fields.overspray-reach"),
        () -> LengthFormat.show(Length.mm(now.get().reachMm()), rows.units()));
  }

  void refresh() {
    if (shown != now.get().getClass()) {
      shown = now.get().getClass();
      rows.clear();
      if (now.get() instanceof Overspray.Fan) {
        nozzle();
      } else {
        stated();
      }
    }
    kind.refresh();
    rows.refresh();
  }
}
