package slabwright.desk.start;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import slabwright.desk.model.plan.PlanList;
import slabwright.project.plan.LeftWork;
import slabwright.project.plan.PlanFiles;
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
  public static StartEntry recent(PlanList.SavedPlan saved, Words words) {
    Path plan = saved.file();
    return new StartEntry(
        plan,
        String.valueOf(plan.getFileName()),
        String.valueOf(plan.getParent()),
        saved
            .changed()
            .map(at -> words.say("desk.start.entries.changed", time(at, words)))
            .orElse(""));
  }

  /** What was not saved when the program last ended. */
  public static StartEntry left(PlanFiles.LeftPlan left, Words words) {
    Path plan = left.plan();
    return new StartEntry(
        plan,
        name(plan, words),
        left.work().map(w -> what(w, words)).orElse(String.valueOf(plan.getParent())),
        left.work()
            .map(w -> words.say("desk.start.entries.left-at", time(w.at(), words)))
            .orElse(""));
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

  /** What a plan that can be gone on with is called: its file, or when it was begun. */
  private static String name(Path plan, Words words) {
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
