package slabwright.desk.cards.inlay;

import java.util.Locale;
import java.util.Optional;
import slabwright.desk.cards.Card;
import slabwright.desk.cards.FieldRows;
import slabwright.desk.cards.NumberRange;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.edit.InlayChange;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.shell.Controls;
import slabwright.site.GraphicSource;
import slabwright.site.Inlay;
import slabwright.site.Spot;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.Result;

/** The inlay's graphic, size and place. */
public final class InlayCard extends Card {
  private final DeskContext bench;
  private final SelectedInlay inlay;
  private final FieldRows rows;
  private String door = "none";

  /**
   * A card.
   *
   * @param choose asks for a graphic and places it
   */
  public InlayCard(DeskContext bench, Runnable choose) {
    super(bench, "size-and-place", bench.words().say("desk.cards.inlay.inlay.size-and-place"));
    this.bench = bench;
    this.inlay = new SelectedInlay(bench);
    rows = new FieldRows(bench);
    body().getChildren().add(rows);
    var add =
        Controls.button(words().say("desk.cards.inlay.inlay.another-graphic"), "link", choose);
    Controls.named(add, words().say("desk.cards.inlay.inlay.choose-a-graphic-and-place"), "");
    beside(add);
  }

  private Optional<DoorwayDatum> jamb() {
    return inlay
        .now()
        .flatMap(i -> bench.focus().area().flatMap(a -> DoorwayDatum.nearest(a, i.middle().vec())));
  }

  private Spot middle() {
    return inlay.now().map(Inlay::middle).orElse(Spot.mm(0, 0));
  }

  private void fill() {
    rows.clear();
    rows.freeText(
            words().say("desk.cards.inlay.inlay.name"),
            () -> inlay.now().map(Inlay::name).orElse(""),
            this::rename)
        .id("inlay-name");
    rows.figure(
        words().say("desk.cards.inlay.inlay.graphic"),
        () -> inlay.now().map(Inlay::graphic).orElse(""));
    if (isPdf()) {
      rows.text(
              words().say("desk.cards.inlay.inlay.page"),
              () -> String.valueOf(inlay.now().map(Inlay::source).map(InlayCard::page).orElse(1)),
              this::turnTo)
          .id("inlay-page");
    }
    rows.length(
            words().say("desk.cards.inlay.inlay.width"),
            LengthUse.LARGE_SIZE,
            () -> inlay.now().map(Inlay::width).orElse(Length.ZERO),
            this::widen)
        .id("inlay-width");
    rows.number(
            words().say("desk.cards.inlay.inlay.turn"),
            () -> QuantityFormat.number(turn(), turn() % 1 == 0 ? 0 : 1) + "°",
            new NumberRange(-360, 360),
            v -> inlay.change(i -> InlayChange.placed(i, i.middle(), v)))
        .id("inlay-turn");
    jamb().ifPresent(j -> offsets(j.doorway().name()));
    if (jamb().isEmpty()) {
      rows.length(
          words().say("desk.cards.inlay.inlay.middle-right"),
          LengthUse.PLACE,
          () -> middle().x(),
          v -> put(new Spot(v, middle().y())));
      rows.length(
          words().say("desk.cards.inlay.inlay.middle-up"),
          LengthUse.PLACE,
          () -> middle().y(),
          v -> put(new Spot(middle().x(), v)));
    }
  }

  private boolean isPdf() {
    return inlay
        .now()
        .filter(i -> i.graphic().toLowerCase(Locale.ROOT).endsWith(".pdf"))
        .isPresent();
  }

  private static int page(GraphicSource source) {
    return source.page().orElse(1);
  }

  /** To another page of the PDF; whether the file has it is said when it is read. */
  private Result<Double> turnTo(String text) {
    return new NumberRange(1, 9999)
        .read(text)
        .flatMap(
            v ->
                v % 1 == 0
                    ? Result.ok(v)
                    : Result.refused(Message.of("desk.cards.inlay.inlay.whole-page", text)))
        .map(v -> rows.taken(v, n -> inlay.change(i -> InlayChange.page(i, n.intValue()))));
  }

  private void offsets(String doorway) {
    rows.length(
            words().say("desk.cards.inlay.inlay.along-from-jamb"),
            LengthUse.PLACE,
            () -> Length.mm(along()),
            v -> put(at(v.mm(), off())))
        .id("inlay-along");
    rows.length(
            words().say("desk.cards.inlay.inlay.off-that-wall"),
            LengthUse.PLACE,
            () -> Length.mm(off()),
            v -> put(at(along(), v.mm())))
        .id("inlay-off");
    rows.sentence(
        () -> words().say("desk.cards.inlay.inlay.its-middle-measured-from-the", doorway),
        "card-hint");
  }

  private double along() {
    return jamb().map(j -> j.along(middle())).orElse(0.0);
  }

  private double off() {
    return jamb().map(j -> j.off(middle())).orElse(0.0);
  }

  private Spot at(double along, double off) {
    return jamb().map(j -> j.at(along, off)).orElse(middle());
  }

  private double turn() {
    return inlay.now().map(Inlay::turn).orElse(0.0);
  }

  private void rename(String name) {
    inlay.change(i -> InlayChange.named(i, name));
  }

  private void widen(Length v) {
    inlay.change(i -> InlayChange.wide(i, v));
  }

  private void put(Spot to) {
    inlay.change(i -> InlayChange.placed(i, to, i.turn()));
  }

  @Override
  protected void refresh() {
    String now = jamb().map(j -> j.doorway().id()).orElse("") + isPdf();
    if (!now.equals(door) && inlay.now().isPresent()) {
      door = now;
      fill();
    }
    rows.refresh();
  }

  @Override
  protected String title() {
    return inlay.now().map(Inlay::name).filter(n -> !n.isBlank()).orElseGet(super::title);
  }

  @Override
  public boolean isWanted() {
    return inlay.now().isPresent();
  }
}
