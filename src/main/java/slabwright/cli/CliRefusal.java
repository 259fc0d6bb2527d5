package slabwright.cli;

import java.util.List;
import slabwright.site.Refusal;

/** Input that is refused: ends the command with exit 3, one sentence a line on the error stream. */
final class CliRefusal extends Exception {
  private static final long serialVersionUID = 1;

  private final transient List<String> sentences;

  CliRefusal(List<String> sentences) {
    super(String.join(" ", sentences));
    this.sentences = List.copyOf(sentences);
  }

  static CliRefusal of(String sentence) {
    return new CliRefusal(List.of(sentence));
  }

  static CliRefusal of(List<Refusal> refusals) {
    return new CliRefusal(refusals.stream().map(CliRefusal::line).toList());
  }

  /** The sentence with its place in the file, where the sentence does not say it already. */
  private static String line(Refusal r) {
    return r.place().isEmpty() || r.sentence().contains(r.place())
        ? r.sentence()
        : r.place() + ": " + r.sentence();
  }

  List<String> sentences() {
    return sentences;
  }
}
