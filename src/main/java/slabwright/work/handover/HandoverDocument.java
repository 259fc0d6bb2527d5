package slabwright.work.handover;

import java.util.List;

/**
 * A paper to hand over, as text and data.
 *
 * @param intro sentences under the title
 * @param signatures lines to sign, by who signs
 */
public record HandoverDocument(
    String title, List<String> intro, List<Section> sections, List<String> signatures) {
  public HandoverDocument {
    intro = List.copyOf(intro);
    sections = List.copyOf(sections);
    signatures = List.copyOf(signatures);
  }

  /** A headed list. */
  public record Section(String heading, List<Row> rows) {
    public Section {
      rows = List.copyOf(rows);
    }
  }

  /**
   * One line.
   *
   * @param value may be empty
   * @param tick whether it gets a box to tick
   */
  public record Row(String label, String value, boolean tick) {
    static Row fact(String label, String value) {
      return new Row(label, value, false);
    }

    static Row toTick(String label, String value) {
      return new Row(label, value, true);
    }
  }

  /** The whole paper as plain text. */
  public String text() {
    StringBuilder out = new StringBuilder(title).append("\n\n");
    intro.forEach(s -> out.append(s).append('\n'));
    for (Section s : sections) {
      out.append('\n').append(s.heading()).append('\n');
      s.rows().forEach(r -> out.append(line(r)).append('\n'));
    }
    signatures.forEach(s -> out.append("\n______________________  ").append(s));
    return out.toString().stripTrailing() + "\n";
  }

  private static String line(Row r) {
    String box = r.tick() ? "[ ] " : "    ";
    return box + r.label() + (r.value().isEmpty() ? "" : ": " + r.value());
  }
}
