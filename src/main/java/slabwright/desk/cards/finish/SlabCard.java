package slabwright.desk.cards.finish;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.NumberRange;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.input.LengthUse;
import slabwright.site.AirSpace;
import slabwright.site.FloorArea;
import slabwright.site.Slab;
import slabwright.site.edit.AreaEdit;
import slabwright.units.Length;
import slabwright.units.QuantityFormat;
import slabwright.units.Result;

/** What is known of the slab and the air over it; what was not measured stays empty. */
public final class SlabCard extends Card {
  private final DeskContext bench;
  private final FieldRows rows;
  private final FieldRows air;
  private final MoistureFields moisture;

  public SlabCard(DeskContext bench) {
    super(
        bench,
        "slab-and-air-as-measured",
        bench.words().say("desk.cards.finish.slab.slab-and-air-as-measured"));
    this.bench = bench;
    rows = new FieldRows(bench);
    air = new FieldRows(bench);
    moisture = new MoistureFields(bench, this::slab, this::set);
    body().getChildren().addAll(rows, moisture, air);
    number(
        words().say("desk.cards.finish.slab.mohs-hardness"),
        "slab-mohs",
        SlabChange.Reading.MOHS,
        new NumberRange(1, 10));
    number(
        words().say("desk.cards.finish.slab.age-years"),
        "slab-age",
        SlabChange.Reading.AGE,
        new NumberRange(0, 500));
    rows.maybe(
            words().say("desk.cards.finish.slab.thickness"),
            LengthUse.MARGIN,
            () -> slab().thickness(),
            v -> set(SlabChange.thick(slab(), v)))
        .id("slab-thickness");
    rows.choice(
            words().say("desk.cards.finish.slab.vapour-barrier"),
            List.of(Optional.<Boolean>empty(), Optional.of(true), Optional.of(false)),
            this::barrier,
            () -> slab().vapourBarrier(),
            v -> set(SlabChange.barrier(slab(), v)))
        .setId("slab-barrier");
    temperature(
        words().say("desk.cards.finish.slab.slab-c"),
        "slab-surface",
        SlabChange.Reading.SURFACE,
        new NumberRange(-30, 80));
    temperature(
        words().say("desk.cards.finish.slab.air-c"),
        "slab-air",
        SlabChange.Reading.AIR,
        new NumberRange(-30, 60));
    number(
        words().say("desk.cards.finish.slab.humidity"),
        "slab-humidity",
        SlabChange.Reading.HUMIDITY,
        new NumberRange(1, 100));
    air();
  }

  private void air() {
    air.maybe(
            words().say("desk.cards.finish.slab.ceiling"),
            LengthUse.LARGE_SIZE,
            () -> space().ceiling(),
            v -> set(space(v, flow(), mixing())))
        .id("ceiling");
    air.airflow(
            words().say("desk.cards.finish.slab.fresh-air-m-h"),
            this::flow,
            v -> set(space(space().ceiling(), v, mixing())))
        .id("airflow");
    air.number(
            words().say("desk.cards.finish.slab.mixing-factor-k"),
            () -> QuantityFormat.number(mixing(), 1),
            new NumberRange(1, 20),
            v -> set(space(space().ceiling(), flow(), v)))
        .id("mixing");
  }

  private String barrier(Optional<Boolean> v) {
    return v.map(
            b ->
                b
                    ? words().say("desk.cards.finish.slab.lies-under-it")
                    : words().say("desk.cards.finish.slab.no-barrier"))
        .orElseGet(() -> words().say("desk.cards.finish.slab.not-known"));
  }

  private FloorArea area() {
    return bench.focus().area().orElseGet(() -> FloorArea.of("none", "", List.of()));
  }

  private Slab slab() {
    return area().slab();
  }

  private void set(Slab next) {
    bench.desk().push(new AreaEdit.SetSlab(area().id(), next));
  }

  private AirSpace space() {
    return area().air();
  }

  private double flow() {
    return space().airflowM3PerHour();
  }

  private double mixing() {
    return space().mixing();
  }

  private static AirSpace space(Optional<Length> ceiling, double flow, double mixing) {
    return new AirSpace(ceiling, flow, mixing);
  }

  private void set(AirSpace next) {
    bench.desk().push(new AreaEdit.SetAir(area().id(), next));
  }

  private void number(String name, String id, SlabChange.Reading what, NumberRange range) {
    rows.text(
            name,
            () -> {
              OptionalDouble v = SlabChange.get(slab(), what);
              return v.isPresent()
                  ? QuantityFormat.number(v.getAsDouble(), v.getAsDouble() % 1 == 0 ? 0 : 1)
                  : "";
            },
            text ->
                (text.isBlank()
                        ? Result.ok(OptionalDouble.empty())
                        : range.read(text).map(OptionalDouble::of))
                    .map(v -> rows.taken(v, d -> set(SlabChange.with(slab(), what, d)))))
        .id(id);
  }

  private void temperature(String name, String id, SlabChange.Reading what, NumberRange celsius) {
    rows.temperature(
            name,
            () -> SlabChange.get(slab(), what),
            celsius,
            v -> set(SlabChange.with(slab(), what, v)))
        .id(id);
  }

  @Override
  protected void refresh() {
    rows.refresh();
    moisture.refresh();
    air.refresh();
  }

  @Override
  public boolean isWanted() {
    return bench.focus().area().isPresent();
  }
}
