package slabwright.project.export;

/** What the sheets and their numbers can be saved as. */
public enum ExportFormat {
  PDF,
  SVG,
  CSV,
  JSON
}
