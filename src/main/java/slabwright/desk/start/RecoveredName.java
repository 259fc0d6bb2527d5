package slabwright.desk.start;

import java.nio.file.Path;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import slabwright.words.Words;

/** What a plan that can be gone on with is called: its file, or when it was begun. */
final class RecoveredName {
  private RecoveredName() {}

  static String of(Path plan, Words words) {
    String name = plan.getFileName().toString();
    if (name.length() < 15) {
      return name;
    }
    try {
      LocalDateTime begun =
          LocalDateTime.parse(
              name.substring(0, 15), DateTimeFormatter.ofPattern("yyyyMMdd-HHmmss", Locale.ROOT));
      String when = words.say("desk.start.recovered-name.date-pattern");
      return words.say(
          "desk.start.recovered-name.begun",
          DateTimeFormatter.ofPattern(when, words.locale()).format(begun));
    } catch (DateTimeParseException e) {
      return name;
    }
  }
}
