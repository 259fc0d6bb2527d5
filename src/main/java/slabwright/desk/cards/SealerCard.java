package slabwright.desk.cards;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.desk.model.Bench;
import slabwright.desk.shell.Controls;
import slabwright.site.FloorArea;
import slabwright.units.Quantity;
import slabwright.work.coat.Advice;
import slabwright.work.coat.SealerAdvice;
import slabwright.work.coat.SealerQuestions;

/**
 * Choosing a sealer as questions: what the plan knows stands as an answer, what it does not know is
 * asked, and each piece of advice says why. Use, sun and traffic are asked here alone.
 */
public final class SealerCard extends Card {
  private final Bench bench;
  private final FieldRows rows;
  private Optional<Boolean> wet = Optional.empty();
  private Optional<Boolean> sun = Optional.empty();
  private boolean heavy = true;
  private List<Object> shown = List.of();

  public SealerCard(Bench bench) {
    super("Choosing a sealer");
    this.bench = bench;
    rows = new FieldRows(bench.desk());
    body().getChildren().add(rows);
  }

  private SealerQuestions questions(FloorArea area) {
    SealerQuestions q = SealerQuestions.of(area, heavy);
    return new SealerQuestions(
        q.humidity(),
        q.emission(),
        q.damp(),
        q.barrier(),
        q.outdoors(),
        wet.orElse(q.wet()),
        sun.orElse(q.sun()),
        heavy);
  }

  private void fill(FloorArea area) {
    rows.clear();
    SealerQuestions q = questions(area);
    reading("Moisture in the slab, F2170", q.humidity(), " % RH");
    reading("Moisture given off, F1869", q.emission(), " lb/1000 ft²·24 h");
    rows.figure(
        "Plastic sheet, D4263",
        () -> q.damp().map(d -> d ? "damp" : "no moisture seen").orElse("not done"));
    rows.figure(
        "Vapour barrier",
        () -> q.barrier().map(b -> b ? "there is one" : "none").orElse("nobody knows"));
    rows.figure("Where", () -> q.outdoors() ? "outdoors" : "indoors");
    rows.tick("Gets wet in use", q::wet, v -> answer(() -> wet = Optional.of(v)))
        .setId("sealer-wet");
    rows.tick("Sun falls on it", q::sun, v -> answer(() -> sun = Optional.of(v)))
        .setId("sealer-sun");
    rows.tick("Chairs, carts, many feet", () -> heavy, v -> answer(() -> heavy = v))
        .setId("sealer-traffic");
    List<Advice> advice = SealerAdvice.of(q);
    advice.forEach(a -> rows.getChildren().add(Finding.look(a.prefer() + " " + a.why()).row()));
    if (advice.isEmpty()) {
      rows.getChildren().add(Finding.fine("Nothing speaks against a film here.").row());
    }
    rows.getChildren()
        .add(
            Controls.sentence(
                "Advice, not a rule: the product's data sheet comes first. Readings are typed"
                    + " under \"Slab and air\".",
                "card-hint"));
  }

  private void reading(String name, OptionalDouble value, String unit) {
    rows.figure(
        name,
        () -> value.isPresent() ? Quantity.number(value.getAsDouble(), 1) + unit : "not measured");
  }

  private void answer(Runnable set) {
    set.run();
    refresh();
  }

  @Override
  protected void refresh() {
    Optional<FloorArea> area = bench.focus().areaOf(bench.desk().site());
    List<Object> now = List.of(area.map(FloorArea::id), area.map(this::questions));
    if (!now.equals(shown)) {
      shown = now;
      area.ifPresent(this::fill);
    }
  }

  @Override
  public boolean isWanted() {
    return bench.focus().areaOf(bench.desk().site()).isPresent();
  }
}
