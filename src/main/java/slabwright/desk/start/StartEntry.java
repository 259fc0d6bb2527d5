package slabwright.desk.start;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Optional;
import slabwright.project.plan.LeftWork;
import slabwright.words.Words;

/**
 * A plan that can be gone on with, as the first screen lists it.
 *
 * @param name what it is called
 * @param what what is in it, or where it lies
 * @param when its last change; empty when the system does not say
 */
public record StartEntry(Path plan, String name, String what, String when) {
  /** A plan that was saved, by its file. */
  public static StartEntry recent(Path plan, Words words) {
    return new StartEntry(
        plan,
        String.valueOf(plan.getFileName()),
        String.valueOf(plan.getParent()),
        saved(plan, words));
  }

  private static String saved(Path plan, Words words) {
    try {
      return words.say(
          "desk.start.entries.changed", time(Files.getLastModifiedTime(plan).toInstant(), words));
    } catch (IOException e) {
      return "";
    }
  }

  /** What was not saved when the program last ended. */
  public static StartEntry left(Path plan, Optional<LeftWork> work, Words words) {
    return new StartEntry(
        plan,
        RecoveredName.of(plan, words),
        work.map(w -> what(w, words)).orElse(String.valueOf(plan.getParent())),
        work.map(w -> words.say("desk.start.entries.left-at", time(w.at(), words))).orElse(""));
  }

  private static String what(LeftWork work, Words words) {
    int marks = work.site().areas().stream().mapToInt(a -> a.marks().size()).sum();
    return words.say(
        "desk.start.entries.left", work.site().name(), work.site().areas().size(), marks);
  }

  private static String time(Instant at, Words words) {
    String pattern = words.say("desk.start.recovered-name.date-pattern");
    return DateTimeFormatter.ofPattern(pattern, words.locale())
        .format(at.atZone(ZoneId.systemDefault()));
  }
}
