package slabwright.desk.cards;

import slabwright.desk.model.DeskSettings;

/** Which cards are folded. */
interface CardFolding {
  boolean isFolded(String card);

  void setFolded(String card, boolean on);

  /** Each card by itself, as it was left. */
  static CardFolding eachByItself(DeskSettings settings) {
    return new CardFolding() {
      @Override
      public boolean isFolded(String card) {
        return settings.isFolded(card);
      }

      @Override
      public void setFolded(String card, boolean on) {
        settings.setFolded(card, on);
      }
    };
  }

  /**
   * One open at a time: short steps in place of a column of several screens.
   *
   * @param first the one that is open at the beginning
   * @param turned told when another one opens
   */
  static CardFolding oneOpen(DeskSettings settings, String first, Runnable turned) {
    return new CardFolding() {
      @Override
      public boolean isFolded(String card) {
        return !settings.openStep(first).equals(card);
      }

      @Override
      public void setFolded(String card, boolean on) {
        settings.setOpenStep(on ? "" : card);
        turned.run();
      }
    };
  }
}
