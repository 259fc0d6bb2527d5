package slabwright.work.days;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slabwright.units.SortedCopy;

/**
 * Who does which step: persons by their number from 0.
 *
 * @param persons of each step by its id
 */
public record PersonRota(Map<String, List<Integer>> persons) {
  public PersonRota {
    persons = SortedCopy.of(persons);
  }

  public static PersonRota of(DayPlan plan) {
    Map<String, List<Integer>> persons = new HashMap<>();
    plan.steps().forEach(s -> persons.put(s.task().id(), s.who().persons()));
    return new PersonRota(persons);
  }

  /** The persons of a step as letters, A the first. */
  public List<String> letters(String stepId) {
    return persons.getOrDefault(stepId, List.of()).stream().map(PersonRota::letter).toList();
  }

  public static String letter(int person) {
    return Character.toString('A' + person);
  }
}
