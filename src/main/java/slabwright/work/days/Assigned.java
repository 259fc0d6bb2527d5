package slabwright.work.days;

import java.util.List;

/**
 * Who and what is on a step from its start to its end.
 *
 * @param persons by number from 0
 */
public record Assigned(List<Integer> persons, List<JobTool> tools) {
  public Assigned {
    persons = List.copyOf(persons);
    tools = List.copyOf(tools);
  }
}
