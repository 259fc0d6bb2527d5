package slabwright.project;

import java.util.List;
import slabwright.units.Refusal;
import slabwright.words.Words;

/** Input that is refused: ends the command with exit 3, one sentence a line on the error stream. */
public final class RefusedInput extends Exception {
  private static final long serialVersionUID = 1;

  private final transient List<String> sentences;

  public RefusedInput(List<String> sentences) {
    super(String.join(" ", sentences));
    this.sentences = List.copyOf(sentences);
  }

  public static RefusedInput of(String sentence) {
    return new RefusedInput(List.of(sentence));
  }

  public static RefusedInput of(List<Refusal> refusals, Words words) {
    return new RefusedInput(refusals.stream().map(r -> line(r, words)).toList());
  }

  /** The sentence with its place in the file, where the sentence does not say it already. */
  private static String line(Refusal r, Words words) {
    String sentence = words.say(r.message());
    return r.place().isEmpty() || sentence.contains(r.place())
        ? sentence
        : r.place() + ": " + sentence;
  }

  public List<String> sentences() {
    return sentences;
  }
}
