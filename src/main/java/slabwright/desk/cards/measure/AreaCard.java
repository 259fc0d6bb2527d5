package slabwright.desk.cards.measure;

import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.model.scene.Pictures;
import slabwright.site.FloorArea;
import slabwright.site.Setting;
import slabwright.site.Spot;
import slabwright.site.edit.AreaEdit;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/** The floor area looked at: its name, under a roof or not, its size. */
public final class AreaCard extends Card {
  private final DeskContext bench;
  private final FieldRows rows;
  private final Pictures pictures;

  public AreaCard(DeskContext bench, Pictures pictures) {
    super(bench, "floor-area", bench.words().say("desk.cards.measure.area.floor-area"));
    this.bench = bench;
    this.pictures = pictures;
    rows = new FieldRows(bench);
    body().getChildren().add(rows);
    rows.freeText(words().say("desk.cards.measure.area.name"), () -> area().name(), this::rename)
        .id("area-name");
    rows.choice(
            words().say("desk.cards.measure.area.under-a-roof"),
            java.util.List.of(Setting.values()),
            s ->
                s == Setting.INDOOR
                    ? words().say("desk.cards.measure.area.indoors")
                    : words().say("desk.cards.measure.area.outdoors"),
            () -> area().setting(),
            v -> bench.desk().push(new AreaEdit.SetSetting(area().id(), v)))
        .setId("area-setting");
    rows.length(
            words().say("desk.cards.measure.area.corner-a-right"),
            LengthUse.PLACE,
            () -> first().x(),
            v -> shift(new Spot(v, first().y())))
        .id("area-x");
    rows.length(
            words().say("desk.cards.measure.area.corner-a-up"),
            LengthUse.PLACE,
            () -> first().y(),
            v -> shift(new Spot(first().x(), v)))
        .id("area-y");
    rows.figure(words().say("desk.cards.measure.area.outline"), this::size);
    rows.figure(words().say("desk.cards.measure.area.around"), this::around);
  }

  private void rename(String to) {
    if (!to.isEmpty()) {
      bench.desk().push(new AreaEdit.Rename(area().id(), to));
    }
  }

  private Spot first() {
    return area().outline().isEmpty() ? Spot.mm(0, 0) : area().outline().get(0).from();
  }

  /** The whole area goes where its first corner goes. */
  private void shift(Spot to) {
    bench.desk().push(new AreaEdit.Shift(area().id(), to.vec().minus(first().vec())));
  }

  private FloorArea area() {
    return bench.focus().area().orElseGet(() -> FloorArea.of("none", "", java.util.List.of()));
  }

  private String size() {
    UnitSystem units = bench.desk().shown().units();
    return pictures.picture().map(p -> QuantityFormat.area(p.floor().area(), units)).orElse("–");
  }

  private String around() {
    UnitSystem units = bench.desk().shown().units();
    return pictures
        .picture()
        .map(p -> QuantityFormat.run(p.floor().boundaryLength(), units))
        .orElse("–");
  }

  @Override
  protected void refresh() {
    rows.refresh();
  }

  @Override
  public boolean isWanted() {
    return bench.focus().area().isPresent();
  }
}
