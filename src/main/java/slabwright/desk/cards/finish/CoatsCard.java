package slabwright.desk.cards.finish;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Button;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.ComputingRow;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.cards.PictureRow;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SiteComputation;
import slabwright.desk.shell.Controls;
import slabwright.figures.DivisionWords;
import slabwright.figures.LaneDiagram;
import slabwright.site.AreaDetails;
import slabwright.site.FloorArea;
import slabwright.site.Spot;
import slabwright.site.edit.AreaEdit;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.DividedCoat;

/** The coats of the finish system: how much of each, in which kits. */
public final class CoatsCard extends Card {
  private final DeskContext bench;
  private final SiteComputation job;
  private final ComputingRow working = new ComputingRow();
  private final FieldRows rows;
  private List<Object> shown = List.of();

  public CoatsCard(DeskContext bench, SiteComputation job) {
    super(bench, "coats", bench.words().say("desk.cards.finish.coats.coats"));
    this.bench = bench;
    this.job = job;
    rows = new FieldRows(bench);
    body().getChildren().addAll(working.node(words(), job::cancel), rows);
  }

  private Optional<AreaWorkPlan> work() {
    Optional<String> id = bench.focus().area().map(FloorArea::id);
    return job.done().flatMap(d -> id.flatMap(d.work()::area));
  }

  private void fill(AreaWorkPlan w) {
    rows.clear();
    UnitSystem units = rows.units();
    for (CoatPlan c : w.coats()) {
      int n = c.job().coats();
      rows.getChildren().add(Controls.sentence(c.product().label(), "coat-name"));
      rows.figure(
          words().say("desk.cards.finish.coats.count", n),
          () -> words().say(c.totalVolume().text(v -> QuantityFormat.volume(v, units))));
      rows.figure(
          words().say("desk.cards.finish.coats.to-lay-one-coat"),
          () -> words().say(c.coatTime().text(DaysCard::hours)));
      LaneDiagram.of(c, w.floor().wayOut(), words(), PictureRow.WIDTH)
          .map(
              d ->
                  PictureRow.of(
                      d,
                      bench,
                      words().say("desk.cards.finish.coats.lanes-of", c.product().label())))
          .ifPresent(rows.getChildren()::add);
      warnings(c);
    }
    w.unknownProducts()
        .forEach(
            id ->
                rows.getChildren()
                    .add(
                        FindingRow.look(
                                words().say("desk.cards.finish.coats.the-shop-book-has-no", id))
                            .row(words())));
    if (w.coats().isEmpty()) {
      rows.getChildren()
          .add(
              Controls.sentence(
                  words().say("desk.cards.finish.coats.no-finish-system-is-set"), "card-words"));
    }
    String from = job.done().map(j -> bench.words().say(j.work().book().origin())).orElse("");
    rows.getChildren().add(Controls.sentence(from, "card-hint"));
    rows.getChildren().add(Controls.sentence(bench.words().say(WorkPlan.NOTICE), "card-hint"));
  }

  /** Proposed lines are kept on the plan, so that later changes do not move them. */
  private void keep(DividedCoat divided, String product) {
    FloorArea area = bench.focus().area().orElseThrow();
    List<AreaDetails.CoatDivision> lines = new ArrayList<>(area.details().coatDivisions());
    for (DividedCoat.DivisionLine l : divided.lines()) {
      List<Spot> path = l.line().points().stream().map(p -> Spot.mm(p.x(), p.y())).toList();
      lines.add(new AreaDetails.CoatDivision(product, path));
    }
    bench
        .desk()
        .push(
            new AreaEdit.SetDetails(
                area.id(),
                Message.of("desk.cards.finish.coats.lines-kept"),
                area.details().withCoatDivisions(lines)));
  }

  private void divided(DividedCoat divided, String product) {
    look(DivisionWords.of(divided, rows.units(), words()));
    boolean kept = divided.lines().stream().anyMatch(l -> l.source() == DividedCoat.Source.PLAN);
    if (!kept) {
      Button keep =
          Controls.button(
              words().say("desk.cards.finish.coats.keep-lines"),
              "link",
              () -> keep(divided, product));
      keep.setId("keep-lines-" + product);
      rows.getChildren().add(keep);
    }
  }

  /** What a crew must know before it opens a can. */
  private void warnings(CoatPlan c) {
    c.divided().ifPresent(d -> divided(d, c.product().id()));
    if (!c.batches().isKnown()) {
      look(bench.words().say(c.batches().text(b -> "")));
    }
    if (c.cutInOutlastsWetEdge().maybe().orElse(false)) {
      look(
          words()
              .say(
                  "desk.cards.finish.coats.cutting-in-takes-and-an",
                  c.cutIn().text(DaysCard::hours),
                  c.wetEdge().text(t -> t.toMinutes() + " min")));
    }
    if (!c.keepsWetEdge().maybe().orElse(true)) {
      look(words().say("desk.cards.finish.coats.a-lane-is-lapped-after"));
    }
  }

  private void look(String words) {
    rows.getChildren().add(FindingRow.look(words).row(words()));
  }

  @Override
  protected void refresh() {
    working.show(job.isWorking());
    List<Object> now = List.of(work(), rows.units(), bench.settings().dark());
    if (!now.equals(shown)) {
      shown = now;
      work().ifPresent(this::fill);
    }
  }

  @Override
  public boolean isWanted() {
    return bench.focus().area().isPresent();
  }
}
