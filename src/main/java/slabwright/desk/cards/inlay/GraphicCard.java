package slabwright.desk.cards.inlay;

import slabwright.desk.cards.Card;
import slabwright.desk.model.DeskContext;
import slabwright.desk.shell.Controls;
import slabwright.site.FloorArea;

/** The way to a first inlay. */
public final class GraphicCard extends Card {
  private final DeskContext bench;

  public GraphicCard(DeskContext bench, Runnable choose) {
    super(
        bench,
        "a-graphic-for-the-floor",
        bench.words().say("desk.cards.inlay.graphic.a-graphic-for-the-floor"));
    this.bench = bench;
    var button =
        Controls.button(words().say("desk.cards.inlay.graphic.choose-an-svg"), "solid", choose);
    button.setId("choose-graphic");
    body()
        .getChildren()
        .addAll(
            Controls.sentence(
                words().say("desk.cards.inlay.graphic.drop-an-svg-on-the"), "card-words"),
            button);
  }

  @Override
  public boolean isWanted() {
    return bench.focus().area().map(FloorArea::inlays).map(l -> l.isEmpty()).orElse(true);
  }
}
