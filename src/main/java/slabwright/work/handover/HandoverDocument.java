package slabwright.work.handover;

import java.util.List;
import java.util.function.Function;
import slabwright.units.Message;

/**
 * A paper to hand over, as text and data.
 *
 * @param intro sentences under the title
 * @param signatures lines to sign, by who signs
 */
public record HandoverDocument(
    Message title, List<Message> intro, List<Section> sections, List<Message> signatures) {
  public HandoverDocument {
    intro = List.copyOf(intro);
    sections = List.copyOf(sections);
    signatures = List.copyOf(signatures);
  }

  /** A headed list. */
  public record Section(Message heading, List<Row> rows) {
    public Section {
      rows = List.copyOf(rows);
    }
  }

  /**
   * One line.
   *
   * @param value may be an empty sentence
   * @param tick whether it gets a box to tick
   */
  public record Row(Message label, Message value, boolean tick) {
    static Row fact(Object label, Object value) {
      return new Row(said(label), said(value), false);
    }

    static Row toTick(Object label, Object value) {
      return new Row(said(label), said(value), true);
    }
  }

  /** A message, or a text that is data, such as a name or a figure with its unit. */
  static Message said(Object o) {
    return o instanceof Message m ? m : Message.of("work.handover-document.text", o);
  }

  /** The whole paper as plain text, in the words that {@code say} gives its messages. */
  public String text(Function<Message, String> say) {
    StringBuilder out = new StringBuilder(say.apply(title)).append("\n\n");
    intro.forEach(s -> out.append(say.apply(s)).append('\n'));
    for (Section s : sections) {
      out.append('\n').append(say.apply(s.heading())).append('\n');
      s.rows().forEach(r -> out.append(line(r, say)).append('\n'));
    }
    signatures.forEach(s -> out.append("\n______________________  ").append(say.apply(s)));
    return out.toString().stripTrailing() + "\n";
  }

  private static String line(Row r, Function<Message, String> say) {
    String box = r.tick() ? "[ ] " : "    ";
    String value = say.apply(r.value());
    return box + say.apply(r.label()) + (value.isEmpty() ? "" : ": " + value);
  }
}
