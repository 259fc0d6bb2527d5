package slabwright.desk.cards;

import java.util.function.BiFunction;
import java.util.function.Function;
import slabwright.desk.model.Bench;
import slabwright.desk.model.Inlays;
import slabwright.desk.model.Specs;
import slabwright.site.Inlay;
import slabwright.site.StencilSpec;
import slabwright.units.Length;

/** How the vinyl is cut and masked. */
public final class StencilCard extends Card {
  private final PickedInlay inlay;
  private final FieldRows rows;

  public StencilCard(Bench bench) {
    super("Vinyl and masking");
    inlay = new PickedInlay(bench);
    rows = new FieldRows(bench.desk());
    body().getChildren().add(rows);
    field("Roll width", StencilSpec::roll, Specs::roll);
    field("Overlap", StencilSpec::overlap, Specs::overlap);
    field("Margin", StencilSpec::margin, Specs::margin);
    field("Press band", StencilSpec::press, Specs::press);
    field("Overspray reach", s -> Length.mm(s.overspray().reachMm()), Specs::reach);
  }

  private void field(
      String name,
      Function<StencilSpec, Length> get,
      BiFunction<StencilSpec, Length, StencilSpec> with) {
    rows.length(
            name,
            () -> inlay.now().map(Inlay::spec).map(get).orElse(Length.ZERO),
            v -> inlay.change(i -> Inlays.with(i, with.apply(i.spec(), v))))
        .id("stencil-" + name.toLowerCase(java.util.Locale.ROOT).replace(' ', '-'));
  }

  @Override
  public boolean refresh() {
    rows.refresh();
    return inlay.now().isPresent();
  }
}
