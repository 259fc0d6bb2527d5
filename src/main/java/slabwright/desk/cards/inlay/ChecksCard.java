package slabwright.desk.cards.inlay;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.HBox;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.cards.PlaceNavigator;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.desk.model.plan.Releases;
import slabwright.desk.shell.Controls;
import slabwright.inlay.ComputedInlay;
import slabwright.inlay.InlayPlan;
import slabwright.inlay.artwork.Artwork;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.Inlay;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/** What to look at before anything is cut: reading direction, loose pieces, warnings. */
public final class ChecksCard extends Card {
  private static final int MOST = 12;

  private final DeskContext bench;
  private final SelectedAreaResults answers;
  private final PlaceNavigator places;
  private final Releases releases;
  private final SelectedInlay inlay;
  private final HBox working;
  private List<Object> shown = List.of();

  public ChecksCard(
      DeskContext bench, SelectedAreaResults answers, PlaceNavigator places, Releases releases) {
    super(bench, "before-it-is-cut", bench.words().say("desk.cards.inlay.checks.before-it-is-cut"));
    this.bench = bench;
    this.answers = answers;
    this.places = places;
    this.releases = releases;
    this.inlay = new SelectedInlay(bench);
    ProgressBar bar = new ProgressBar();
    bar.setPrefWidth(150);
    bar.setAccessibleText(words().say("desk.cards.inlay.checks.the-inlay-is-being-worked"));
    working =
        new HBox(
            bar,
            Controls.button(
                words().say("desk.cards.inlay.checks.cancel"), "link", answers::cancel));
    working.setSpacing(10);
  }

  private void fill(Inlay i, Optional<ComputedInlay> answer, boolean changed) {
    body().getChildren().clear();
    if (answers.isWorking()) {
      body().getChildren().add(working);
    }
    List<FindingRow> all = new ArrayList<>();
    answer
        .flatMap(ComputedInlay::refusal)
        .map(why -> words().say(why))
        .ifPresent(why -> all.add(new FindingRow(FindingRow.Sign.CANT, why, Optional.empty())));
    if (changed) {
      all.add(
          new FindingRow(
              FindingRow.Sign.CANT,
              words().say("desk.cards.inlay.checks.the-graphic-changed-on-disk"),
              Optional.empty()));
    }
    reading(i).ifPresent(all::add);
    answer.ifPresent(a -> a.plan().ifPresent(p -> all.addAll(findings(a, p, i))));
    all.stream().limit(MOST).forEach(f -> body().getChildren().add(f.row(words())));
    if (changed) {
      body().getChildren().add(accept(i));
    }
    if (all.size() > MOST) {
      body()
          .getChildren()
          .add(
              Controls.label(
                  words().say("desk.cards.inlay.checks.and-more-of-the-kind", all.size() - MOST),
                  "card-hint"));
    }
  }

  private Button accept(Inlay i) {
    Button b =
        Controls.button(
            words().say("desk.cards.inlay.checks.accept-the-graphic-as-it"),
            "soft-button",
            () -> bench.focus().area().ifPresent(a -> releases.accept(a, i)));
    b.setId("accept-graphic");
    return b;
  }

  private Optional<FindingRow> reading(Inlay i) {
    return bench
        .focus()
        .area()
        .flatMap(a -> DoorwayDatum.nearest(a, i.middle().vec()))
        .map(
            j -> {
              double askew = j.askew(i);
              String door = j.doorway().name();
              return Math.abs(askew) <= 45
                  ? FindingRow.fine(
                      words().say("desk.cards.inlay.checks.reads-the-right-way-up", door))
                  : FindingRow.look(turned(askew, door));
            });
  }

  private String turned(double askew, String door) {
    String back = QuantityFormat.number(-askew, 0);
    return Math.abs(askew) > 135
        ? words().say("desk.cards.inlay.checks.reads-upside-down", door, back)
        : words().say("desk.cards.inlay.checks.reads-sideways", door, back);
  }

  private List<FindingRow> findings(ComputedInlay a, InlayPlan p, Inlay now) {
    Affine map = a.toSite(now).orElse(Affine.IDENTITY);
    UnitSystem units = bench.desk().shown().units();
    Artwork artwork = a.placed().orElseThrow().artwork();
    return new InlayFindings(artwork, p, now, inlay, units, words(), at -> goTo(map.apply(at)))
        .all();
  }

  private Runnable goTo(Vec at) {
    return () -> places.show(Bounds.EMPTY.including(at));
  }

  @Override
  protected void refresh() {
    Optional<Inlay> now = inlay.now();
    Optional<ComputedInlay> a = now.flatMap(i -> answers.inlay(i.id()));
    List<Object> key =
        List.of(
            now,
            a,
            answers.isWorking(),
            bench.desk().shown().units(),
            now.map(releases::changedOnDisk));
    if (!key.equals(shown)) {
      shown = key;
      now.ifPresent(i -> fill(i, a, releases.changedOnDisk(i)));
    }
  }

  @Override
  public boolean isWanted() {
    return inlay.now().isPresent();
  }
}
