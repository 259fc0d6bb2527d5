package slabwright.desk.cards.finish;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import javafx.scene.Node;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.shell.Controls;
import slabwright.site.FloorArea;
import slabwright.site.FloorUse;
import slabwright.site.Setting;
import slabwright.site.edit.AreaEdit;
import slabwright.units.QuantityFormat;
import slabwright.work.coat.SealerAdvice;
import slabwright.work.coat.SealerParameters;

/**
 * Choosing a sealer as questions: what the plan knows stands as an answer, what it does not know is
 * asked, and each piece of advice says why and can be declined.
 */
public final class SealerCard extends Card {
  private static final FloorArea NONE = FloorArea.of("none", "", List.of());

  private final DeskContext bench;
  private final FieldRows known;
  private final FieldRows asked;
  private final FieldRows indoors;
  private final AdviceRows advice;

  public SealerCard(DeskContext bench) {
    super("Choosing a sealer");
    this.bench = bench;
    known = new FieldRows(bench.desk());
    asked = new FieldRows(bench.desk());
    indoors = new FieldRows(bench.desk());
    advice = new AdviceRows(bench);
    Node hint =
        Controls.sentence(
            "Advice, not a rule: the product's data sheet comes first. Readings are typed under"
                + " \"Slab and air\". Declined advice is printed on sheet 8 with a line to sign.",
            "card-hint");
    body().getChildren().addAll(known, asked, indoors, advice, hint);
    known();
    ask(asked, "Gets wet in use", "sealer-wet", FloorUse::wet, FloorUse::withWet);
    ask(asked, "Sun falls on it", "sealer-sun", FloorUse::sun, FloorUse::withSun);
    ask(indoors, "Much traffic", "sealer-traffic", FloorUse::traffic, FloorUse::withTraffic);
  }

  private void known() {
    reading("Moisture in the slab, F2170", SealerParameters::humidity, " % RH");
    reading("Moisture given off, F1869", SealerParameters::emission, " lb/1000 ft²·24 h");
    known.figure(
        "Plastic sheet, D4263",
        () -> questions().damp().map(d -> d ? "damp" : "no moisture seen").orElse("not done"));
    known.figure(
        "Vapour barrier",
        () -> questions().barrier().map(b -> b ? "there is one" : "none").orElse("nobody knows"));
    known.figure("Where", () -> questions().outdoors() ? "outdoors" : "indoors");
  }

  private void reading(String name, Function<SealerParameters, OptionalDouble> value, String unit) {
    known.figure(
        name,
        () -> {
          OptionalDouble v = value.apply(questions());
          return v.isPresent() ? QuantityFormat.number(v.getAsDouble(), 1) + unit : "not measured";
        });
  }

  private void ask(
      FieldRows rows,
      String question,
      String id,
      Function<FloorUse, Optional<Boolean>> now,
      BiFunction<FloorUse, Optional<Boolean>, FloorUse> with) {
    rows.choice(
            question,
            List.of(Optional.<Boolean>empty(), Optional.of(true), Optional.of(false)),
            SealerCard::answer,
            () -> now.apply(area().use()),
            v -> answer(with.apply(area().use(), v)))
        .setId(id);
  }

  private static String answer(Optional<Boolean> v) {
    return v.map(b -> b ? "yes" : "no").orElse("not asked");
  }

  private void answer(FloorUse to) {
    bench.desk().push(new AreaEdit.SetUse(area().id(), to));
  }

  private FloorArea area() {
    return bench.focus().areaOf(bench.desk().site()).orElse(NONE);
  }

  private SealerParameters questions() {
    return SealerParameters.of(area());
  }

  @Override
  protected void refresh() {
    List.of(known, asked, indoors).forEach(FieldRows::refresh);
    Controls.show(indoors, area().setting() == Setting.INDOOR);
    advice.show(area(), SealerAdvice.of(questions()));
  }

  @Override
  public boolean isWanted() {
    return bench.focus().areaOf(bench.desk().site()).isPresent();
  }
}
