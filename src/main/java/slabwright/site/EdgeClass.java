package slabwright.site;

/** What the free floor meets along an edge, in the order sheets list them. */
public enum EdgeClass {
  WALL("wall"),
  OPEN_EDGE("open edge"),
  KERB("kerb"),
  DOORWAY("doorway"),
  ISLAND("island"),
  BOOTH("booth"),
  COLUMN("column"),
  TOP_OR_STEP("top or step");

  private final String word;

  EdgeClass(String word) {
    this.word = word;
  }

  public String word() {
    return word;
  }
}
