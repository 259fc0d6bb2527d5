package slabwright.desk.cards;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BiFunction;
import java.util.function.Function;
import slabwright.desk.model.Bench;
import slabwright.site.AirSpace;
import slabwright.site.AreaEdit;
import slabwright.site.FloorArea;
import slabwright.site.Slab;
import slabwright.units.Length;
import slabwright.units.LengthFormat;
import slabwright.units.Parsed;
import slabwright.units.Quantity;

/** What is known of the slab and the air over it; what was not measured stays empty. */
public final class SlabCard extends Card {
  private final Bench bench;
  private final FieldRows rows;

  public SlabCard(Bench bench) {
    super("Slab and air, as measured");
    this.bench = bench;
    rows = new FieldRows(bench.desk());
    body().getChildren().add(rows);
    slab(
        "Mohs hardness",
        new NumberRange(1, 10),
        Slab::mohs,
        (s, v) -> with(s, v, s.surfaceC(), s.airC(), s.humidity()));
    slab(
        "Slab, °C",
        new NumberRange(-30, 80),
        Slab::surfaceC,
        (s, v) -> with(s, s.mohs(), v, s.airC(), s.humidity()));
    slab(
        "Air, °C",
        new NumberRange(-30, 60),
        Slab::airC,
        (s, v) -> with(s, s.mohs(), s.surfaceC(), v, s.humidity()));
    slab(
        "Humidity, %",
        new NumberRange(1, 100),
        Slab::humidity,
        (s, v) -> with(s, s.mohs(), s.surfaceC(), s.airC(), v));
    rows.text("Ceiling", this::ceiling, this::setCeiling).id("ceiling");
    rows.number(
            "Fresh air, m³/h",
            () -> Quantity.number(area().air().airflowM3PerHour(), 0),
            new NumberRange(0, 1e7),
            v -> air(new AirSpace(area().air().ceiling(), v, area().air().mixing())))
        .id("airflow");
    rows.number(
        "Mixing factor K",
        () -> Quantity.number(area().air().mixing(), 1),
        new NumberRange(1, 20),
        v -> air(new AirSpace(area().air().ceiling(), area().air().airflowM3PerHour(), v)));
  }

  private static Slab with(
      Slab s, OptionalDouble mohs, OptionalDouble surface, OptionalDouble air, OptionalDouble rh) {
    return new Slab(
        mohs, s.ageYears(), s.thickness(), s.moisture(), surface, air, rh, s.vapourBarrier());
  }

  private FloorArea area() {
    return bench.focus().area().orElseGet(() -> FloorArea.of("none", "", List.of()));
  }

  private void slab(
      String name,
      NumberRange range,
      Function<Slab, OptionalDouble> get,
      BiFunction<Slab, OptionalDouble, Slab> set) {
    rows.text(
        name,
        () -> {
          OptionalDouble v = get.apply(area().slab());
          return v.isPresent() ? Quantity.number(v.getAsDouble(), 1) : "";
        },
        text -> {
          Parsed<Optional<Double>> read =
              text.isBlank() ? Parsed.ok(Optional.empty()) : range.read(text).map(Optional::of);
          return read.map(
              v -> {
                OptionalDouble d =
                    v.isPresent() ? OptionalDouble.of(v.get()) : OptionalDouble.empty();
                bench.desk().push(new AreaEdit.SetSlab(area().id(), set.apply(area().slab(), d)));
                return d;
              });
        });
  }

  private String ceiling() {
    return area().air().ceiling().map(c -> LengthFormat.show(c, rows.units())).orElse("");
  }

  private Parsed<?> setCeiling(String text) {
    Parsed<Optional<Length>> read =
        text.isBlank() ? Parsed.ok(Optional.empty()) : Length.parse(text).map(Optional::of);
    return read.map(
        v -> {
          air(new AirSpace(v, area().air().airflowM3PerHour(), area().air().mixing()));
          return v;
        });
  }

  private void air(AirSpace next) {
    bench.desk().push(new AreaEdit.SetAir(area().id(), next));
  }

  @Override
  public boolean refresh() {
    rows.refresh();
    return bench.focus().area().isPresent();
  }
}
