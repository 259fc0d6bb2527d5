package slabwright.desk.cards.finish;

import java.util.List;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.layout.VBox;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.FindingRow;
import slabwright.desk.cards.TypedDateTime;
import slabwright.desk.model.Desk;
import slabwright.desk.model.DeskContext;
import slabwright.site.AdviceId;
import slabwright.site.Declined;
import slabwright.site.FloorArea;
import slabwright.site.edit.AreaEdit;
import slabwright.words.Words;
import slabwright.work.coat.ClientAdvice;

/**
 * Advice given for a floor area, each piece with a tick for a client who declines it, and then by
 * whom and when.
 */
final class AdviceRows extends VBox {
  private record DisplayedAdvice(String area, List<ClientAdvice> advice, List<AdviceId> declined) {}

  private final Desk desk;
  private final Words words;
  private final FieldRows rows;
  private Optional<DisplayedAdvice> shown = Optional.empty();

  AdviceRows(DeskContext bench) {
    desk = bench.desk();
    words = bench.words();
    rows = new FieldRows(bench);
    getChildren().add(rows);
  }

  void show(FloorArea area, List<ClientAdvice> advice) {
    DisplayedAdvice now =
        new DisplayedAdvice(
            area.id(), advice, area.declined().stream().map(Declined::advice).toList());
    if (!shown.equals(Optional.of(now))) {
      shown = Optional.of(now);
      keepingTheCursor(() -> fill(now));
    }
    rows.refresh();
  }

  /** What had the keys has them again when it is still there. */
  private void keepingTheCursor(Runnable fill) {
    Optional<String> id =
        Optional.ofNullable(getScene())
            .map(s -> s.getFocusOwner())
            .filter(n -> n.getId() != null && rows.lookup("#" + n.getId()) == n)
            .map(Node::getId);
    fill.run();
    id.map(i -> rows.lookup("#" + i)).ifPresent(Node::requestFocus);
  }

  private void fill(DisplayedAdvice now) {
    rows.clear();
    now.advice().forEach(a -> row(now, a));
    if (now.advice().isEmpty()) {
      rows.getChildren()
          .add(
              FindingRow.fine(
                      words.say("desk.cards.finish.advice-rows.nothing-speaks-against-a-film"))
                  .row(words));
    }
    now.declined().stream()
        .filter(d -> now.advice().stream().noneMatch(a -> a.id() == d))
        .forEach(
            d ->
                tick(
                    now.area(),
                    d,
                    words.say(
                        "desk.cards.finish.advice-rows.declined-not-given-as-things",
                        ClientAdvice.prefer(d))));
  }

  private void row(DisplayedAdvice now, ClientAdvice a) {
    rows.getChildren()
        .add(
            FindingRow.look(words.say("desk.cards.finish.advice-rows.advice", a.prefer(), a.why()))
                .row(words));
    CheckBox tick =
        tick(
            now.area(),
            a.id(),
            words.say("desk.cards.finish.advice-rows.the-client-declines-this"));
    tick.setAccessibleText(
        words.say("desk.cards.finish.advice-rows.the-client-declines", a.prefer()));
    if (now.declined().contains(a.id())) {
      declined(now.area(), a.id());
    }
  }

  private CheckBox tick(String area, AdviceId advice, String name) {
    CheckBox tick =
        rows.tick(
            name,
            () -> declined(advice).isPresent(),
            on ->
                desk.push(
                    on
                        ? new AreaEdit.DeclineAdvice(area, Declined.of(advice))
                        : new AreaEdit.ReinstateAdvice(area, advice)));
    tick.setId("decline-" + advice.word());
    return tick;
  }

  private void declined(String area, AdviceId advice) {
    rows.freeText(
            words.say("desk.cards.finish.advice-rows.declined-by"),
            () -> now(advice).by(),
            v -> desk.push(new AreaEdit.DeclineAdvice(area, now(advice).withBy(v))))
        .id("declined-by-" + advice.word());
    rows.text(
            words.say("desk.cards.finish.advice-rows.on"),
            () -> now(advice).on().map(Object::toString).orElse(""),
            s ->
                TypedDateTime.day(s)
                    .map(
                        day ->
                            rows.taken(
                                day,
                                d ->
                                    desk.push(
                                        new AreaEdit.DeclineAdvice(area, now(advice).withOn(d))))))
        .id("declined-on-" + advice.word());
  }

  private Optional<Declined> declined(AdviceId advice) {
    return shown.flatMap(s -> desk.site().area(s.area())).flatMap(a -> a.declined(advice));
  }

  private Declined now(AdviceId advice) {
    return declined(advice).orElseGet(() -> Declined.of(advice));
  }
}
