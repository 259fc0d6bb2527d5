package slabwright.inlay.artwork;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import slabwright.inlay.artwork.ArtworkWarning.Kind;
import slabwright.shape.Vec;
import slabwright.units.Message;

/**
 * Warnings and questions gathered while a graphic is read; each is said once, at the first place it
 * was met.
 */
public final class WarningCollector {
  private record Key(Kind kind, Message message) {}

  private final Map<Key, Optional<Vec>> seen = new LinkedHashMap<>();
  private final List<ArtworkQuestion> questions = new ArrayList<>();

  public void add(Kind kind, Message message) {
    seen.putIfAbsent(new Key(kind, message), Optional.empty());
  }

  /** A note with a place in the page's pixels. */
  public void add(Kind kind, Message message, Vec place) {
    seen.putIfAbsent(new Key(kind, message), Optional.of(place));
  }

  /** A question about a colour, with a place in the page's pixels; asked once a colour and kind. */
  public void ask(ArtworkQuestion.Kind kind, Message message, String colour, Vec place) {
    boolean asked =
        questions.stream().anyMatch(q -> q.kind() == kind && q.colours().contains(colour));
    if (!asked) {
      questions.add(new ArtworkQuestion(kind, message, List.of(colour), Optional.of(place)));
    }
  }

  /** All questions, their places carried as those of the warnings. */
  List<ArtworkQuestion> questions(Function<Vec, Vec> toFrame) {
    return questions.stream()
        .map(q -> new ArtworkQuestion(q.kind(), q.message(), q.colours(), q.place().map(toFrame)))
        .toList();
  }

  /** All notes, their places carried from page pixels to the frame the warnings are shown in. */
  List<ArtworkWarning> warnings(Function<Vec, Vec> toFrame) {
    List<ArtworkWarning> list = new ArrayList<>();
    seen.forEach(
        (key, place) -> list.add(new ArtworkWarning(key.kind, key.message, place.map(toFrame))));
    return list;
  }
}
