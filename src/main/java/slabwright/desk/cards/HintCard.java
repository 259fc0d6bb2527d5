package slabwright.desk.cards;

import java.util.function.BooleanSupplier;
import slabwright.desk.model.DeskContext;
import slabwright.desk.shell.Controls;

/** A short sentence on how to begin a stage, shown while there is nothing else to show. */
public final class HintCard extends Card {
  private final BooleanSupplier wanted;

  public HintCard(
      DeskContext bench, String key, String title, String hint, BooleanSupplier wanted) {
    super(bench, key, title);
    this.wanted = wanted;
    body().getChildren().add(Controls.sentence(hint, "card-words"));
  }

  @Override
  public boolean isWanted() {
    return wanted.getAsBoolean();
  }
}
