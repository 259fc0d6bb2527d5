package slabwright.desk.cards;

import java.util.function.BooleanSupplier;
import slabwright.desk.shell.Controls;

/** A short sentence on how to begin a stage, shown while there is nothing else to show. */
public final class HintCard extends Card {
  private final BooleanSupplier wanted;

  public HintCard(String title, String words, BooleanSupplier wanted) {
    super(title);
    this.wanted = wanted;
    body().getChildren().add(Controls.sentence(words, "card-words"));
  }

  @Override
  public boolean isWanted() {
    return wanted.getAsBoolean();
  }
}
