package slabwright.desk.cards.prep;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import javafx.scene.control.Slider;
import javafx.scene.layout.VBox;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SelectedAreaRoutes;
import slabwright.desk.model.edit.NewIds;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.shell.Controls;
import slabwright.figures.PassageWords;
import slabwright.floor.reach.MachinePassage;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.site.FloorArea;
import slabwright.site.Machine;
import slabwright.site.edit.AreaEdit;
import slabwright.units.Length;
import slabwright.units.LengthFormat;

/**
 * The machines: body and clearance as sliders; the reach is shaded while they move. Which doorway,
 * gap or bend each one passes.
 */
public final class MachinesCard extends Card {
  private static final int MOST = 12;

  private final DeskContext bench;
  private final SelectedAreaRoutes ways;
  private List<String> shown = List.of();
  private final List<FieldRows> rows = new ArrayList<>();

  public MachinesCard(DeskContext bench, SelectedAreaRoutes ways) {
    super(bench, "machines", bench.words().say("desk.cards.prep.machines.machines"));
    this.bench = bench;
    this.ways = ways;
    var add = Controls.button(words().say("desk.cards.prep.machines.add"), "link", this::add);
    add.setId("add-machine");
    Controls.named(add, words().say("desk.cards.prep.machines.add-a-machine"), "");
    beside(add);
  }

  private Optional<FloorArea> area() {
    return bench.focus().areaOf(bench.desk().site());
  }

  private void add() {
    area()
        .ifPresent(
            a -> {
              String id = NewIds.next("machine-", a.machines().stream().map(Machine::id).toList());
              List<Machine> next = new ArrayList<>(a.machines());
              next.add(
                  new Machine(
                      id,
                      words().say("desk.cards.prep.machines.floor-grinder"),
                      Length.inches(28),
                      Length.inches(26),
                      Length.inches(1)));
              bench.desk().push(new AreaEdit.SetMachines(a.id(), next));
            });
  }

  private void remove(String id) {
    area()
        .ifPresent(
            a ->
                bench
                    .desk()
                    .push(
                        new AreaEdit.SetMachines(
                            a.id(),
                            a.machines().stream().filter(m -> !m.id().equals(id)).toList())));
  }

  private Machine now(String id) {
    return bench
        .focus()
        .area()
        .flatMap(a -> a.machines().stream().filter(m -> m.id().equals(id)).findFirst())
        .orElseGet(() -> new Machine(id, "", Length.ZERO, Length.ZERO, Length.ZERO));
  }

  private Optional<AreaEdit> changed(String id, UnaryOperator<Machine> how) {
    return area()
        .map(
            a ->
                new AreaEdit.SetMachines(
                    a.id(),
                    a.machines().stream().map(m -> m.id().equals(id) ? how.apply(m) : m).toList()));
  }

  private void set(String id, UnaryOperator<Machine> how) {
    changed(id, how).ifPresent(bench.desk()::push);
  }

  private static Machine body(Machine m, Length body) {
    double lost = m.body().mm() - m.grinding().mm();
    Length grinding =
        m.grinding().mm() <= body.mm()
            ? m.grinding()
            : Length.mm(Math.max(25, body.mm() - Math.max(0, lost)));
    return m.withBody(body).withGrinding(grinding);
  }

  private static Machine clearance(Machine m, Length c) {
    return m.withClearance(c);
  }

  private VBox machine(String id) {
    FieldRows r = new FieldRows(bench);
    rows.add(r);
    r.freeText(
            words().say("desk.cards.prep.machines.name"),
            () -> now(id).name(),
            v -> set(id, m -> m.withName(v)))
        .id("machine-name-" + id);
    r.length(
            words().say("desk.cards.prep.machines.body-width"),
            LengthUse.MACHINE,
            () -> now(id).body(),
            v -> set(id, m -> body(m, v)))
        .id("machine-body-" + id);
    r.slider(
        slider(words().say("desk.cards.prep.machines.body-width"), 300, 1200),
        () -> now(id).body(),
        v -> changed(id, m -> body(m, v)));
    r.length(
            words().say("desk.cards.prep.machines.grinding-width"),
            LengthUse.MACHINE,
            () -> now(id).grinding(),
            v -> set(id, m -> m.withGrinding(v)))
        .id("machine-head-" + id);
    r.length(
            words().say("desk.cards.prep.machines.side-clearance"),
            LengthUse.MARGIN,
            () -> now(id).clearance(),
            v -> set(id, m -> clearance(m, v)))
        .id("machine-clear-" + id);
    r.slider(
        slider(words().say("desk.cards.prep.machines.side-clearance"), 0, 200),
        () -> now(id).clearance(),
        v -> changed(id, m -> clearance(m, v)));
    r.maybe(
            words().say("desk.cards.prep.machines.length"),
            LengthUse.MACHINE,
            () -> now(id).travel().length(),
            v -> set(id, m -> m.withTravel(m.travel().withLength(v))))
        .id("machine-length-" + id);
    r.length(
            words().say("desk.cards.prep.machines.passing-clearance"),
            LengthUse.MARGIN,
            () -> now(id).passing(),
            v -> set(id, m -> m.withTravel(m.travel().withPassing(Optional.of(v)))))
        .id("machine-passing-" + id);
    r.sentence(() -> strip(now(id)), "card-hint");
    r.sentence(() -> passages(id), "card-hint");
    VBox box =
        new VBox(
            r,
            Controls.button(
                words().say("desk.cards.prep.machines.remove-this-machine"),
                "link",
                () -> remove(id)));
    box.setSpacing(4);
    return box;
  }

  private String strip(Machine m) {
    return words()
        .say(
            "desk.cards.prep.machines.leaves-a-strip-of-along",
            LengthFormat.show(m.strip(), bench.desk().shown().units()));
  }

  /** Where it passes and where not, what does not fit first. */
  private String passages(String id) {
    Optional<ReachAnalysis> now = ways.ways();
    if (now.isEmpty()) {
      return "";
    }
    PassageWords say =
        new PassageWords(now.get().takeoff().area(), bench.desk().shown().units(), words());
    return now.get().passages().stream()
        .filter(p -> p.machine().id().equals(id))
        .sorted(Comparator.comparing(MachinePassage::fits).thenComparing(MachinePassage::kind))
        .limit(MOST)
        .map(p -> words().say("desk.cards.prep.machines.passes", say.place(p), say.verdict(p)))
        .collect(Collectors.joining("\n"));
  }

  private static Slider slider(String name, double low, double high) {
    Slider s = new Slider(low, high, low);
    s.setAccessibleText(name);
    s.setBlockIncrement(25.4);
    return s;
  }

  @Override
  protected void refresh() {
    List<String> ids =
        bench
            .focus()
            .area()
            .map(a -> a.machines().stream().map(Machine::id).toList())
            .orElse(List.of());
    if (!ids.equals(shown) || body().getChildren().isEmpty()) {
      shown = ids;
      rows.clear();
      body().getChildren().clear();
      ids.forEach(id -> body().getChildren().add(machine(id)));
      if (ids.isEmpty()) {
        body()
            .getChildren()
            .add(
                Controls.sentence(
                    words().say("desk.cards.prep.machines.no-machine-yet-all-of"), "card-words"));
      }
    }
    rows.forEach(FieldRows::refresh);
  }

  @Override
  public boolean isWanted() {
    return bench.focus().area().isPresent();
  }
}
