package slabwright.desk.cards.mark;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import slabwright.desk.canvas.PhotoHover;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.edit.PinnedTo;
import slabwright.desk.shell.Controls;
import slabwright.site.FloorArea;
import slabwright.site.Site;
import slabwright.site.edit.SiteEdit;
import slabwright.site.job.PinnedPhoto;
import slabwright.units.Message;

/** Photos pinned to the picked mark or corner, each with its day, before or after, and a note. */
public final class PhotosCard extends Card {
  private static final double WIDE = 306;

  private final DeskContext bench;
  private final Supplier<Optional<Path>> plan;
  private final FieldRows rows;
  private List<String> shown = List.of();

  /**
   * For what is picked.
   *
   * @param plan the plan's file, that photos are relative to
   * @param add asks for a photo
   */
  public PhotosCard(DeskContext bench, Supplier<Optional<Path>> plan, Runnable add) {
    super(bench, "photos", bench.words().say("desk.cards.mark.photos.title"));
    this.bench = bench;
    this.plan = plan;
    rows = new FieldRows(bench);
    var button = Controls.button(words().say("desk.cards.mark.photos.add"), "link", add);
    button.setId("photo-add");
    body().getChildren().addAll(rows, button);
  }

  private List<PinnedPhoto> photos() {
    Optional<String> area = bench.focus().area().map(FloorArea::id);
    return bench
        .focus()
        .single()
        .flatMap(i -> area.map(a -> PinnedTo.photos(bench.desk().site(), a, i)))
        .orElse(List.of());
  }

  private void fill(List<PinnedPhoto> all) {
    rows.clear();
    for (int i = 0; i < all.size(); i++) {
      add(all.get(i), i);
    }
  }

  private void add(PinnedPhoto photo, int index) {
    plan.get()
        .flatMap(p -> PhotoHover.view(p, photo, WIDE, WIDE / 2))
        .ifPresent(
            view -> {
              view.setAccessibleText(photo.file());
              rows.getChildren().add(view);
            });
    String id = "photo-" + index;
    rows.choice(
            words().say("desk.cards.mark.photos.shows"),
            phases(),
            this::phase,
            () -> now(index, photo).phase(),
            v -> put(now(index, photo), p -> with(p, p.note(), v)))
        .setId(id + "-phase");
    rows.freeText(
            words().say("desk.cards.mark.photos.note"),
            () -> now(index, photo).note(),
            v -> put(now(index, photo), p -> with(p, v, p.phase())))
        .id(id + "-note");
    rows.figure(
        words().say("desk.cards.mark.photos.taken"),
        () ->
            now(index, photo)
                .on()
                .map(Object::toString)
                .orElse(words().say("desk.cards.mark.photos.day-unknown")));
    var away =
        Controls.button(
            words().say("desk.cards.mark.photos.away"), "link", () -> remove(now(index, photo)));
    away.setId(id + "-away");
    rows.getChildren().add(away);
  }

  private PinnedPhoto now(int index, PinnedPhoto was) {
    List<PinnedPhoto> all = photos();
    return index < all.size() ? all.get(index) : was;
  }

  private static List<Optional<PinnedPhoto.Phase>> phases() {
    return List.of(
        Optional.empty(),
        Optional.of(PinnedPhoto.Phase.BEFORE),
        Optional.of(PinnedPhoto.Phase.AFTER));
  }

  private String phase(Optional<PinnedPhoto.Phase> phase) {
    if (phase.isEmpty()) {
      return words().say("desk.cards.mark.photos.not-said");
    }
    return phase.get() == PinnedPhoto.Phase.BEFORE
        ? words().say("desk.cards.mark.photos.before")
        : words().say("desk.cards.mark.photos.after");
  }

  private static PinnedPhoto with(PinnedPhoto p, String note, Optional<PinnedPhoto.Phase> phase) {
    return p.withNote(note).withPhase(phase);
  }

  private void put(PinnedPhoto photo, UnaryOperator<PinnedPhoto> change) {
    Site site = bench.desk().site();
    List<PinnedPhoto> all =
        site.job().photos().stream().map(p -> p.equals(photo) ? change.apply(p) : p).toList();
    push(Message.of("desk.cards.mark.photos.change"), site, all);
  }

  /** Only the pin goes; the file stays beside the plan, for undo. */
  private void remove(PinnedPhoto photo) {
    Site site = bench.desk().site();
    List<PinnedPhoto> all = new ArrayList<>(site.job().photos());
    all.remove(photo);
    push(Message.of("desk.cards.mark.photos.unpin"), site, all);
  }

  private void push(Message step, Site site, List<PinnedPhoto> all) {
    bench.desk().push(new SiteEdit.SetJob(step, site.job().withPhotos(all)));
  }

  @Override
  protected void refresh() {
    List<String> now =
        photos().stream().map(p -> p.file() + p.pin() + bench.focus().single()).toList();
    if (!now.equals(shown)) {
      shown = now;
      fill(photos());
    }
    rows.refresh();
  }

  @Override
  public boolean isWanted() {
    return bench.focus().single().flatMap(PinnedTo::of).isPresent();
  }
}
