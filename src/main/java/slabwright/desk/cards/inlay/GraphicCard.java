package slabwright.desk.cards.inlay;

import slabwright.desk.cards.Card;
import slabwright.desk.model.DeskContext;
import slabwright.desk.shell.Controls;
import slabwright.site.FloorArea;

/** The way to a first inlay. */
public final class GraphicCard extends Card {
  private final DeskContext bench;

  public GraphicCard(DeskContext bench, Runnable choose) {
    super("A graphic for the floor");
    this.bench = bench;
    var button = Controls.button("Choose an SVG…", "solid", choose);
    button.setId("choose-graphic");
    body()
        .getChildren()
        .addAll(
            Controls.sentence(
                "Drop an SVG on the slab or choose one. It is copied beside the plan; its width,"
                    + " turn and place are typed here or set by dragging.",
                "card-words"),
            button);
  }

  @Override
  public boolean isWanted() {
    return bench.focus().area().map(FloorArea::inlays).map(l -> l.isEmpty()).orElse(true);
  }
}
