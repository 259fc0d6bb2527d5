package slabwright.desk.model;

import slabwright.words.Words;

/** The parts of the desk that its screens share. */
public record DeskContext(Desk desk, Selection focus, DeskSettings settings, Words words) {
  /**
   * The words of the desk's language, lengths and amounts in the units of the plan as it is now.
   */
  @Override
  public Words words() {
    return words.showing(desk.site().units());
  }
}
