package slabwright.work.days;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Who does which step: persons by their number from 0, nobody on two steps at once. Who has
 * breathing protection does the steps that need it and, where others are free, only those.
 *
 * @param persons of each step by its id
 */
public record PersonRota(Map<String, List<Integer>> persons) {
  public PersonRota {
    persons = Map.copyOf(persons);
  }

  /**
   * Shares the steps of a plan out.
   *
   * @param protectedOnes numbers of the persons who have breathing protection
   */
  public static PersonRota of(DayPlan plan, Set<Integer> protectedOnes) {
    List<ScheduledStep> order =
        plan.steps().stream()
            .sorted(
                Comparator.comparing((ScheduledStep s) -> s.task().air().protection().isEmpty())
                    .thenComparing(ScheduledStep::start))
            .toList();
    Map<String, List<Integer>> persons = new HashMap<>();
    List<List<TimeSpan>> busy = new ArrayList<>();
    IntStream.range(0, plan.hours().people()).forEach(i -> busy.add(new ArrayList<>()));
    for (ScheduledStep s : order) {
      boolean masked = !s.task().air().protection().isEmpty();
      List<Integer> chosen =
          IntStream.range(0, busy.size())
              .boxed()
              .filter(i -> !masked || protectedOnes.contains(i))
              .filter(i -> isFree(busy.get(i), s.spans()))
              .sorted(Comparator.comparing((Integer i) -> !masked && protectedOnes.contains(i)))
              .limit(s.task().people())
              .toList();
      chosen.forEach(i -> busy.get(i).addAll(s.spans()));
      persons.put(s.task().id(), chosen);
    }
    return new PersonRota(persons);
  }

  private static boolean isFree(List<TimeSpan> busy, List<TimeSpan> wanted) {
    return busy.stream().noneMatch(b -> wanted.stream().anyMatch(b::meets));
  }

  /** The persons of a step as letters, A the first. */
  public List<String> letters(String stepId) {
    return persons.getOrDefault(stepId, List.of()).stream()
        .map(i -> Character.toString('A' + i))
        .toList();
  }
}
