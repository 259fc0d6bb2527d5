package slabwright.desk.cards.inlay;

import java.util.Locale;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.edit.FilmSpecChange;
import slabwright.desk.model.edit.InlayChange;
import slabwright.desk.model.edit.StencilSpecChange;
import slabwright.site.Inlay;
import slabwright.site.StencilSpec;
import slabwright.units.Length;

/** How the vinyl is cut and masked. */
public final class StencilCard extends Card {
  private static final StencilSpec NONE = StencilSpec.forRoll(Length.inches(48));

  private final SelectedInlay inlay;
  private final FieldRows rows;
  private final OversprayFields overspray;

  public StencilCard(DeskContext bench) {
    super("Vinyl and masking");
    inlay = new SelectedInlay(bench);
    rows = new FieldRows(bench.desk());
    body().getChildren().add(rows);
    field("Roll width", StencilSpec::roll, StencilSpecChange::roll);
    maybe("Usable width", StencilSpec::usable, FilmSpecChange::usable);
    field("Overlap", StencilSpec::overlap, StencilSpecChange::overlap);
    field("Margin", StencilSpec::margin, StencilSpecChange::margin);
    field("Press band", StencilSpec::press, StencilSpecChange::press);
    field("Vinyl holds", StencilSpec::vinylHolds, FilmSpecChange::holds);
    maybe("Longest piece", StencilSpec::longestPiece, FilmSpecChange::longest);
    overspray =
        new OversprayFields(
            bench.desk(),
            () -> spec().overspray(),
            v -> inlay.change(i -> InlayChange.with(i, FilmSpecChange.overspray(i.spec(), v))));
    body().getChildren().add(overspray);
  }

  private void field(
      String name,
      Function<StencilSpec, Length> get,
      BiFunction<StencilSpec, Length, StencilSpec> with) {
    rows.length(
            name,
            () -> get.apply(spec()),
            v -> inlay.change(i -> InlayChange.with(i, with.apply(i.spec(), v))))
        .id(id(name));
  }

  private StencilSpec spec() {
    return inlay.now().map(Inlay::spec).orElse(NONE);
  }

  private void maybe(
      String name,
      Function<StencilSpec, Optional<Length>> get,
      BiFunction<StencilSpec, Optional<Length>, StencilSpec> with) {
    rows.maybe(
            name,
            () -> get.apply(spec()),
            v -> inlay.change(i -> InlayChange.with(i, with.apply(i.spec(), v))))
        .id(id(name));
  }

  private static String id(String name) {
    return "stencil-" + name.toLowerCase(Locale.ROOT).replace(' ', '-');
  }

  @Override
  protected void refresh() {
    overspray.refresh();
    rows.refresh();
  }

  @Override
  public boolean isWanted() {
    return inlay.now().isPresent();
  }
}
