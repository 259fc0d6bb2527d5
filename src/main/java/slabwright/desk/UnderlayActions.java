package slabwright.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import slabwright.desk.cards.measure.UnderlayCard;
import slabwright.desk.model.BackgroundTasks;
import slabwright.desk.model.plan.PlanStorage;
import slabwright.desk.tool.RectifyTool;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.Underlay;
import slabwright.site.edit.SiteEdit;
import slabwright.units.Length;
import slabwright.units.Message;

/**
 * Lays a picture or a page of a PDF under the drawing: its pixels alone are copied beside the plan,
 * never over another file.
 */
final class UnderlayActions implements RectifyTool.Rectification {
  private final DeskModel parts;
  private final Consumer<Bounds> laid;
  private final Consumer<Bounds> flattened;
  private final PdfPages pages = new PdfPages();
  private int asked;

  /**
   * Lays pictures off the asking thread.
   *
   * @param laid told where the picture lies
   * @param flattened told where it lies flat
   */
  UnderlayActions(DeskModel parts, Consumer<Bounds> laid, Consumer<Bounds> flattened) {
    this.parts = parts;
    this.laid = laid;
    this.flattened = flattened;
  }

  void add(Path picture) {
    PlanStorage keeper = parts.keeper();
    parts
        .errands()
        .run(
            new BackgroundTasks.BackgroundTask<>(
                Message.of("desk.app.underlay.laying-the-picture"),
                why -> Message.of("desk.app.underlay.not-copied", why),
                steps -> PlacedUnderlay.read(picture, keeper.folder(), steps),
                made -> lay(made, laid)));
  }

  /** Lays the picture that is there flat; the old one stays on disk, for undo. */
  @Override
  public void rectify(List<Vec> corners, Length first, Length second) {
    Optional<Underlay> now = parts.bench().desk().site().underlay();
    if (now.isEmpty()) {
      return;
    }
    parts
        .errands()
        .run(
            new BackgroundTasks.BackgroundTask<>(
                Message.of("desk.app.underlay.laying-flat"),
                why -> Message.of("desk.app.underlay.flat-not-written", why),
                steps ->
                    PlacedUnderlay.flat(
                        now.get(),
                        UnderlayRectification.of(corners, first, second),
                        parts.keeper().folder(),
                        steps,
                        parts.bench().words()),
                made -> lay(made, flattened)));
  }

  private Optional<PdfPages.Source> source() {
    return pages.of(parts.bench().desk().shown().underlay());
  }

  /** The page that lies under the plan, or is about to; empty for what has one page alone. */
  Optional<UnderlayCard.Pages> pages() {
    boolean coming = asked > 0 && parts.errands().isBusy();
    return source()
        .filter(s -> s.pages() > 1)
        .map(s -> new UnderlayCard.Pages(coming ? asked : s.page(), s.pages()));
  }

  /** Lays another page of the PDF where this one lies, at the same scale of paper. */
  void turnTo(int page) {
    Optional<PdfPages.Source> from = source();
    Optional<Underlay> old = parts.bench().desk().site().underlay();
    if (from.isEmpty() || old.isEmpty()) {
      return;
    }
    asked = page;
    PlanStorage keeper = parts.keeper();
    parts
        .errands()
        .run(
            new BackgroundTasks.BackgroundTask<>(
                Message.of("desk.app.underlay.laying-page", page),
                why -> Message.of("desk.app.underlay.page-not-written", why),
                steps -> PlacedUnderlay.turned(old.get(), from.get(), page, keeper.folder(), steps),
                made -> lay(made, where -> {})));
  }

  private void lay(PlacedUnderlay made, Consumer<Bounds> then) {
    asked = 0;
    made.page().ifPresent(p -> pages.remember(made.underlay().file(), p));
    SiteEdit put = new SiteEdit.SetUnderlay(Optional.of(made.underlay()));
    if (parts.bench().desk().push(put).isOk()) {
      then.accept(made.bounds());
    }
  }
}
