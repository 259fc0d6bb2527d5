package slabwright.desk.cards;

import java.util.Optional;
import java.util.function.UnaryOperator;
import slabwright.desk.model.Bench;
import slabwright.desk.model.Pick;
import slabwright.site.AreaEdit;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.StencilSpec;

/** The inlay that cards speak of: the picked one, else the area's first. */
final class PickedInlay {
  private final Bench bench;

  PickedInlay(Bench bench) {
    this.bench = bench;
  }

  Optional<Inlay> now() {
    Optional<FloorArea> area = bench.focus().area();
    return bench
        .focus()
        .single()
        .filter(Pick.OfInlay.class::isInstance)
        .flatMap(p -> area.flatMap(a -> a.inlay(((Pick.OfInlay) p).id())))
        .or(() -> area.flatMap(a -> a.inlays().stream().findFirst()));
  }

  /**
   * Changes how it is cut.
   *
   * @param step what undo names
   */
  void cut(String step, UnaryOperator<StencilSpec> how) {
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
