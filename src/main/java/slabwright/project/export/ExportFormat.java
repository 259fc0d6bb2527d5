package slabwright.project.export;

/** What the sheets and their numbers can be saved as. */
public enum ExportFormat {
  PDF("the PDF"),
  SVG("the SVG pages"),
  CSV("the quantities"),
  JSON("the numbers as JSON");

  private final String words;

  ExportFormat(String words) {
    this.words = words;
  }

  /** As in "Folder for the PDF". */
  public String words() {
    return words;
  }
}
