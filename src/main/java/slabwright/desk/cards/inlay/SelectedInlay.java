package slabwright.desk.cards.inlay;

import java.util.Optional;
import java.util.function.UnaryOperator;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.StencilSpec;
import slabwright.site.edit.AreaEdit;
import slabwright.units.Message;

/** The inlay that cards speak of: the picked one, else the area's first. */
final class SelectedInlay {
  private final DeskContext bench;

  SelectedInlay(DeskContext bench) {
    this.bench = bench;
  }

  Optional<Inlay> now() {
    Optional<FloorArea> area = bench.focus().area();
    return bench
        .focus()
        .single()
        .flatMap(SelectedInlay::id)
        .flatMap(id -> area.flatMap(a -> a.inlay(id)))
        .or(() -> area.flatMap(a -> a.inlays().stream().findFirst()));
  }

  /** Of the inlay that is picked, or whose seam is. */
  private static Optional<String> id(PlanItem picked) {
    if (picked instanceof PlanItem.OfSeam seam) {
      return Optional.of(seam.inlay());
    }
    return picked instanceof PlanItem.OfInlay i ? Optional.of(i.id()) : Optional.empty();
  }

  /**
   * Changes how it is cut.
   *
   * @param step what undo names
   */
  void cut(Message step, UnaryOperator<StencilSpec> how) {
    FloorArea area = bench.focus().area().orElseThrow();
    now()
        .ifPresent(
            i ->
                bench
                    .desk()
                    .push(new AreaEdit.SetStencil(area.id(), i.id(), step, how.apply(i.spec()))));
  }

  void change(UnaryOperator<Inlay> how) {
    FloorArea area = bench.focus().area().orElseThrow();
    now().ifPresent(i -> bench.desk().push(new AreaEdit.PutInlay(area.id(), how.apply(i))));
  }
}
