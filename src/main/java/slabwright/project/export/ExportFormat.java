package slabwright.project.export;

/** What the sheets and their numbers can be saved as. */
public enum ExportFormat {
  /** A PDF for each reader, with an index. */
  PACKETS,
  PDF,
  SVG,
  CSV,
  JSON
}
