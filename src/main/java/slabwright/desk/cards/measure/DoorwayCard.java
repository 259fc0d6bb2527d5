package slabwright.desk.cards.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.scene.control.CheckBox;
import javafx.scene.control.ChoiceBox;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.edit.FloorsBeside;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.shell.Controls;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.edit.OutlineEdit;
import slabwright.tape.CornerName;
import slabwright.units.Length;

/** The picked doorway: its name, where it stands, how wide, and whether machines come in by it. */
public final class DoorwayCard extends Card {
  private static final Doorway NONE = new Doorway("none", "", 0, Length.ZERO, Length.ZERO, false);

  private final DeskContext bench;
  private final FieldRows rows;
  private final ChoiceBox<Optional<Doorway.LeadsTo>> otherSide;
  private final CheckBox sealed;

  public DoorwayCard(DeskContext bench) {
    super(bench, "doorway", bench.words().say("desk.cards.measure.doorway.doorway"));
    this.bench = bench;
    rows = new FieldRows(bench);
    body().getChildren().add(rows);
    rows.freeText(
            words().say("desk.cards.measure.doorway.name"),
            () -> now().name(),
            v -> put(d -> with(d, v, d.offset(), d.width(), d.wayIn())))
        .id("door-name");
    rows.length(
            words().say("desk.cards.measure.doorway.from-the-corner"),
            LengthUse.PLACE,
            () -> now().offset(),
            v -> put(d -> with(d, d.name(), v, d.width(), d.wayIn())))
        .id("door-offset");
    rows.length(
            words().say("desk.cards.measure.doorway.width"),
            LengthUse.OPENING,
            () -> now().width(),
            v -> put(d -> with(d, d.name(), d.offset(), v, d.wayIn())))
        .id("door-width");
    rows.maybe(
            words().say("desk.cards.measure.doorway.clear-width"),
            LengthUse.OPENING,
            () -> now().passage().clear(),
            v -> put(d -> d.withPassage(d.passage().withClear(v))))
        .id("door-clear");
    rows.sentence(this::where, "card-hint");
    rows.tick(
            words().say("desk.cards.measure.doorway.machines-come-in-here"),
            () -> now().wayIn(),
            v -> put(d -> with(d, d.name(), d.offset(), d.width(), v)))
        .setId("door-way-in");
    otherSide =
        rows.choice(
            words().say("desk.cards.measure.doorway.leads-to"),
            otherSides(),
            this::nameOf,
            this::behind,
            this::lead);
    otherSide.setId("door-leads-to");
    sealed =
        rows.tick(
            words().say("desk.cards.measure.doorway.sealed"),
            () -> now().passage().sealed(),
            this::seal);
    sealed.setId("door-sealed");
    rows.sentence(this::seals, "card-hint");
  }

  private Optional<FloorsBeside.Side> side() {
    return doorway()
        .flatMap(d -> bench.focus().area().map(a -> new FloorsBeside.Side(a.id(), d.id())));
  }

  /** The doorway at the other side, whichever of the two says so. */
  private Optional<Doorway.LeadsTo> behind() {
    return side()
        .flatMap(s -> FloorsBeside.otherSide(bench.desk().site(), s))
        .map(s -> new Doorway.LeadsTo(s.area(), s.doorway()));
  }

  private void lead(Optional<Doorway.LeadsTo> to) {
    Optional<FloorsBeside.Side> there = to.map(t -> new FloorsBeside.Side(t.area(), t.doorway()));
    side().ifPresent(s -> bench.desk().push(FloorsBeside.lead(bench.desk().site(), s, there)));
  }

  private void seal(boolean shut) {
    side().ifPresent(s -> bench.desk().push(FloorsBeside.seal(bench.desk().site(), s, shut)));
  }

  /** What sealing promises; nothing while nobody does. */
  private String seals() {
    return now().passage().sealed() ? words().say("desk.cards.measure.doorway.seals") : "";
  }

  /** Nothing known, and each doorway of the other floor areas. */
  private List<Optional<Doorway.LeadsTo>> otherSides() {
    List<Optional<Doorway.LeadsTo>> all = new ArrayList<>();
    all.add(Optional.empty());
    Optional<String> here = bench.focus().area().map(FloorArea::id);
    for (FloorArea area : bench.desk().site().areas()) {
      if (!here.equals(Optional.of(area.id()))) {
        area.doorways().forEach(d -> all.add(Optional.of(new Doorway.LeadsTo(area.id(), d.id()))));
      }
    }
    return all;
  }

  private String nameOf(Optional<Doorway.LeadsTo> side) {
    return side.flatMap(
            s ->
                bench
                    .desk()
                    .site()
                    .area(s.area())
                    .flatMap(
                        a ->
                            a.doorways().stream()
                                .filter(d -> d.id().equals(s.doorway()))
                                .findFirst()
                                .map(
                                    d ->
                                        words()
                                            .say(
                                                "desk.cards.measure.doorway.other-side",
                                                a.name(),
                                                d.name()))))
        .orElseGet(() -> words().say("desk.cards.measure.doorway.leads-nowhere-known"));
  }

  private String where() {
    int walls = bench.focus().area().map(a -> a.outline().size()).orElse(0);
    return doorway()
        .map(
            d ->
                words()
                    .say(
                        "desk.cards.measure.doorway.in-wall-from-corner-to",
                        CornerName.wall(d.piece(), walls),
                        CornerName.of(d.piece())))
        .orElse("");
  }

  private static Doorway with(Doorway d, String name, Length offset, Length width, boolean in) {
    return d.withName(name).at(d.piece(), offset).withWidth(width).withWayIn(in);
  }

  private Optional<Doorway> doorway() {
    return bench
        .focus()
        .single()
        .filter(PlanItem.OfDoorway.class::isInstance)
        .flatMap(p -> find(((PlanItem.OfDoorway) p).id()));
  }

  private Optional<Doorway> find(String id) {
    return bench
        .focus()
        .area()
        .flatMap(a -> a.doorways().stream().filter(d -> d.id().equals(id)).findFirst());
  }

  private Doorway now() {
    return doorway().orElse(NONE);
  }

  private void put(UnaryOperator<Doorway> change) {
    FloorArea area = bench.focus().area().orElseThrow();
    doorway()
        .ifPresent(d -> bench.desk().push(new OutlineEdit.PutDoorway(area.id(), change.apply(d))));
  }

  @Override
  protected void refresh() {
    List<Optional<Doorway.LeadsTo>> sides = otherSides();
    if (!sides.equals(otherSide.getItems())) {
      otherSide.getItems().setAll(sides);
    }
    Controls.show(sealed, behind().isPresent() || now().passage().sealed());
    rows.refresh();
  }

  @Override
  public boolean isWanted() {
    return doorway().isPresent();
  }
}
