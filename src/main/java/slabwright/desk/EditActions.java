package slabwright.desk;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import slabwright.desk.cards.inlay.NudgeStep;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.edit.Clipboard;
import slabwright.desk.model.edit.FloorsBeside;
import slabwright.desk.model.edit.PickOrder;
import slabwright.desk.model.edit.SelectionEdits;
import slabwright.desk.model.scene.Pictures;
import slabwright.desk.tool.PlanLookup;
import slabwright.desk.tool.select.SeamNudge;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.Move;
import slabwright.site.edit.Edit;
import slabwright.site.edit.MarkEdit;
import slabwright.units.Message;

/** What keys and menu do to whatever is picked. */
final class EditActions {
  private final DeskContext bench;
  private final Pictures pictures;
  private final PlanLookup shown;
  private final Clipboard clipboard = new Clipboard();
  private final InlayActions inlays;

  /**
   * Edits what is picked.
   *
   * @param inlays takes pictures that were copied in another program
   */
  EditActions(DeskContext bench, Pictures pictures, PlanLookup shown, InlayActions inlays) {
    this.inlays = inlays;
    this.bench = bench;
    this.shown = shown;
    this.pictures = pictures;
  }

  private Optional<FloorArea> area() {
    return bench.focus().areaOf(bench.desk().site());
  }

  /** Takes away what is picked; says why where nothing of it can go. */
  void remove() {
    Optional<Edit> edit = area().flatMap(a -> SelectionEdits.removeSelected(a, bench.focus()));
    if (edit.isPresent()) {
      bench.desk().push(edit.get());
    } else {
      bench.focus().selected().stream()
          .findFirst()
          .flatMap(EditActions::whyItStays)
          .ifPresent(bench.desk()::refuse);
    }
  }

  private static Optional<Message> whyItStays(PlanItem p) {
    if (p instanceof PlanItem.OfWall) {
      return Optional.of(Message.of("desk.app.edit.a-wall-stays"));
    }
    return p instanceof PlanItem.OfSeam
        ? Optional.of(Message.of("desk.app.edit.a-seam-stays"))
        : Optional.empty();
  }

  /** Brings the picked marks and graphics into line. */
  void lineUp(Arranging.Line line) {
    arrange(2, Message.of("desk.app.edit.line-up"), all -> Arranging.lineUp(all, line));
  }

  /** Gives the picked marks and graphics the same gaps. */
  void space(boolean across) {
    arrange(3, Message.of("desk.app.edit.space"), all -> Arranging.space(all, across));
  }

  private void arrange(
      int least, Message step, Function<List<Arranging.Placed>, Map<PlanItem, Vec>> how) {
    List<Arranging.Placed> things =
        bench.focus().selected().stream()
            .filter(p -> p instanceof PlanItem.OfMark || p instanceof PlanItem.OfInlay)
            .map(p -> new Arranging.Placed(p, boundsOf(p)))
            .filter(p -> !p.bounds().isEmpty())
            .toList();
    if (things.size() < least) {
      bench.desk().refuse(Message.of("desk.app.edit.pick-more", least));
    } else {
      push(area().flatMap(a -> SelectionEdits.moveEach(a, how.apply(things), step)));
    }
  }

  void copy() {
    copied();
  }

  /** Copies what is picked; a picture copied elsewhere before is then not what is pasted. */
  private boolean copied() {
    boolean some = area().map(a -> clipboard.copy(a, bench.focus())).orElse(false);
    if (some) {
      InlayActions.forgetOutside();
    }
    return some;
  }

  void cut() {
    if (copied()) {
      remove();
    }
  }

  void paste() {
    if (inlays.paste()) {
      return;
    }
    area().flatMap(a -> clipboard.paste(a, bench.focus())).ifPresent(this::laid);
  }

  void duplicate() {
    area().flatMap(a -> Clipboard.duplicate(a, bench.focus())).ifPresent(this::laid);
  }

  private void laid(Clipboard.Paste p) {
    if (bench.desk().push(p.edit()).isOk()) {
      bench.focus().select(p.picks());
    }
  }

  /** Picks the thing after what is picked, or the one before; false where there is none. */
  boolean pickNext(boolean back) {
    Optional<PlanItem> next =
        area().flatMap(a -> PickOrder.next(a, bench.focus().selected(), back));
    next.ifPresent(bench.focus()::select);
    return next.isPresent();
  }

  void pickAll() {
    area()
        .ifPresent(
            a ->
                bench
                    .focus()
                    .select(
                        a.marks().stream()
                            .<PlanItem>map(m -> new PlanItem.OfMark(m.id()))
                            .toList()));
  }

  /**
   * Moves what is picked one step.
   *
   * @param coarse a foot or 100 mm instead of an inch or 10 mm
   */
  boolean nudge(int right, int up, boolean coarse) {
    double step = NudgeStep.mm(bench.desk().site().units(), coarse);
    if (SeamNudge.isPicked(bench)) {
      SeamNudge.by(bench, shown, new Vec(right, up), step).ifPresent(bench.desk()::push);
      return true;
    }
    Move by = Move.by(right * step, up * step);
    return push(area().flatMap(a -> SelectionEdits.moveSelected(a, bench.focus(), by)));
  }

  private boolean push(Optional<? extends Edit> edit) {
    edit.ifPresent(bench.desk()::push);
    return edit.isPresent();
  }

  /** Turns what is picked about its middle. */
  void turn(double degrees) {
    Bounds all = Bounds.EMPTY;
    for (PlanItem p : bench.focus().selected()) {
      all = all.including(boundsOf(p));
    }
    if (!all.isEmpty()) {
      Bounds b = all;
      push(area().flatMap(a -> SelectionEdits.turnSelected(a, bench.focus(), b.middle(), degrees)));
    }
  }

  /** Turns the whole floor area a quarter. */
  void turnFloor() {
    push(area().map(a -> FloorsBeside.turned(a, 90)));
  }

  private Bounds boundsOf(PlanItem p) {
    if (p instanceof PlanItem.OfInlay i) {
      return area()
          .flatMap(a -> a.inlay(i.id()))
          .map(in -> Bounds.of(List.of(in.middle().vec())))
          .orElse(Bounds.EMPTY);
    }
    return pictures
        .picture()
        .flatMap(pic -> pic.thing(p))
        .map(t -> t.bounds())
        .orElse(Bounds.EMPTY);
  }

  /** Lays the picked mark one later (on top) or earlier. */
  void reorder(int by) {
    Optional<FloorArea> a = area();
    if (a.isEmpty() || bench.focus().selectedMarks().size() != 1) {
      return;
    }
    String id = bench.focus().selectedMarks().iterator().next();
    List<String> order = a.get().marks().stream().map(Mark::id).toList();
    int to = Math.max(0, Math.min(order.size() - 1, order.indexOf(id) + by));
    bench.desk().push(new MarkEdit.Reorder(a.get().id(), id, to));
  }
}
