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
    super(
        bench,
        "choosing-a-sealer",
        bench.words().say("desk.cards.finish.sealer.choosing-a-sealer"));
    this.bench = bench;
    known = new FieldRows(bench);
    asked = new FieldRows(bench);
    indoors = new FieldRows(bench);
    advice = new AdviceRows(bench);
    Node hint =
        Controls.sentence(
            words().say("desk.cards.finish.sealer.advice-not-a-rule-the"), "card-hint");
    body().getChildren().addAll(known, asked, indoors, advice, hint);
    known();
    ask(
        asked,
        words().say("desk.cards.finish.sealer.gets-wet-in-use"),
        "sealer-wet",
        FloorUse::wet,
        FloorUse::withWet);
    ask(
        asked,
        words().say("desk.cards.finish.sealer.sun-falls-on-it"),
        "sealer-sun",
        FloorUse::sun,
        FloorUse::withSun);
    ask(
        indoors,
        words().say("desk.cards.finish.sealer.much-traffic"),
        "sealer-traffic",
        FloorUse::traffic,
        FloorUse::withTraffic);
  }

  private void known() {
    known.figure(
        words().say("desk.cards.finish.sealer.moisture-in-the-slab-f"),
        () ->
            reading(SealerParameters::humidity)
                .map(v -> words().say("desk.cards.finish.sealer.rh", v))
                .orElseGet(this::notMeasured));
    known.figure(
        words().say("desk.cards.finish.sealer.moisture-given-off-f"),
        () ->
            reading(SealerParameters::emission)
                .map(v -> words().say("desk.cards.finish.sealer.emission", v))
                .orElseGet(this::notMeasured));
    known.figure(words().say("desk.cards.finish.sealer.plastic-sheet-d"), this::sheetTest);
    known.figure(words().say("desk.cards.finish.sealer.vapour-barrier"), this::barrier);
    known.figure(words().say("desk.cards.finish.sealer.where"), this::setting);
  }

  private String sheetTest() {
    return questions()
        .damp()
        .map(
            d ->
                d
                    ? words().say("desk.cards.finish.sealer.damp")
                    : words().say("desk.cards.finish.sealer.no-moisture-seen"))
        .orElseGet(() -> words().say("desk.cards.finish.sealer.not-done"));
  }

  private String barrier() {
    return questions()
        .barrier()
        .map(
            b ->
                b
                    ? words().say("desk.cards.finish.sealer.there-is-one")
                    : words().say("desk.cards.finish.sealer.no-barrier"))
        .orElseGet(() -> words().say("desk.cards.finish.sealer.nobody-knows"));
  }

  private String setting() {
    return questions().outdoors()
        ? words().say("desk.cards.finish.sealer.outdoors")
        : words().say("desk.cards.finish.sealer.indoors");
  }

  private Optional<String> reading(Function<SealerParameters, OptionalDouble> value) {
    OptionalDouble v = value.apply(questions());
    return v.isPresent()
        ? Optional.of(QuantityFormat.number(v.getAsDouble(), 1))
        : Optional.empty();
  }

  private String notMeasured() {
    return words().say("desk.cards.finish.sealer.not-measured");
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
            this::said,
            () -> now.apply(area().use()),
            v -> answer(with.apply(area().use(), v)))
        .setId(id);
  }

  private String said(Optional<Boolean> v) {
    return v.map(
            b ->
                b
                    ? words().say("desk.cards.finish.sealer.yes")
                    : words().say("desk.cards.finish.sealer.no"))
        .orElseGet(() -> words().say("desk.cards.finish.sealer.not-asked"));
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
