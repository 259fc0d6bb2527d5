package slabwright.desk.cards.inlay;

import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.Function;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.edit.InlayChange;
import slabwright.desk.model.input.LengthUse;
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
    super(
        bench,
        "vinyl-and-masking",
        bench.words().say("desk.cards.inlay.stencil.vinyl-and-masking"));
    inlay = new SelectedInlay(bench);
    rows = new FieldRows(bench);
    body().getChildren().add(rows);
    field(
        "roll-width",
        words().say("desk.cards.inlay.stencil.roll-width"),
        StencilSpec::roll,
        StencilSpecChange::roll);
    maybe(
        "usable-width",
        words().say("desk.cards.inlay.stencil.usable-width"),
        StencilSpec::usable,
        FilmSpecChange::usable);
    field(
        "overlap",
        words().say("desk.cards.inlay.stencil.overlap"),
        StencilSpec::overlap,
        StencilSpecChange::overlap);
    field(
        "margin",
        words().say("desk.cards.inlay.stencil.margin"),
        StencilSpec::margin,
        StencilSpecChange::margin);
    field(
        "press-band",
        words().say("desk.cards.inlay.stencil.press-band"),
        StencilSpec::press,
        StencilSpecChange::press);
    field(
        "vinyl-holds",
        words().say("desk.cards.inlay.stencil.vinyl-holds"),
        StencilSpec::vinylHolds,
        FilmSpecChange::holds);
    maybe(
        "longest-piece",
        words().say("desk.cards.inlay.stencil.longest-piece"),
        StencilSpec::longestPiece,
        FilmSpecChange::longest);
    overspray =
        new OversprayFields(
            bench,
            () -> spec().overspray(),
            v -> inlay.change(i -> InlayChange.with(i, FilmSpecChange.overspray(i.spec(), v))));
    body().getChildren().add(overspray);
  }

  private void field(
      String id,
      String name,
      Function<StencilSpec, Length> get,
      BiFunction<StencilSpec, Length, StencilSpec> with) {
    rows.length(
            name,
            use(id),
            () -> get.apply(spec()),
            v -> inlay.change(i -> InlayChange.with(i, with.apply(i.spec(), v))))
        .id("stencil-" + id);
  }

  /** The roll is as wide as a machine; all else on a stencil is small. */
  private static LengthUse use(String id) {
    return id.equals("roll-width") ? LengthUse.MACHINE : LengthUse.MARGIN;
  }

  private StencilSpec spec() {
    return inlay.now().map(Inlay::spec).orElse(NONE);
  }

  private void maybe(
      String id,
      String name,
      Function<StencilSpec, Optional<Length>> get,
      BiFunction<StencilSpec, Optional<Length>, StencilSpec> with) {
    rows.maybe(
            name,
            use(id),
            () -> get.apply(spec()),
            v -> inlay.change(i -> InlayChange.with(i, with.apply(i.spec(), v))))
        .id("stencil-" + id);
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
