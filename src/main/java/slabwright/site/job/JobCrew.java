package slabwright.site.job;

import java.util.Collections;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * Who works on this job, and with how many tools.
 *
 * @param language of the crew's sheets as a tag such as {@code en} or {@code es-MX}; empty is the
 *     program's own
 * @param tools how many of each kind of tool are on this job, 0 or more; what is not named is as
 *     the shop book says
 */
public record JobCrew(String language, List<Person> persons, SortedMap<String, Integer> tools) {
  public static final JobCrew UNKNOWN = new JobCrew("", List.of(), new TreeMap<>());

  public JobCrew {
    persons = List.copyOf(persons);
    tools = Collections.unmodifiableSortedMap(new TreeMap<>(tools));
  }

  /**
   * One of the crew.
   *
   * @param role what the person does on this job, such as "lead"
   * @param name or initials
   * @param breathing the breathing protection that the person wears, by name; empty is none named
   */
  public record Person(String role, String name, String breathing) {}
}
