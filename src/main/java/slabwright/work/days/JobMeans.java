package slabwright.work.days;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import slabwright.work.step.ToolKind;

/**
 * What a crew has to work with beside its hours.
 *
 * @param masked numbers, from 0, of those who have breathing protection; empty where all do
 * @param tools that are on the job; empty where nobody counts them
 */
public record JobMeans(Optional<Set<Integer>> masked, Optional<List<JobTool>> tools) {
  /** Masks and tools for everybody. */
  public static final JobMeans UNLIMITED = new JobMeans(Optional.empty(), Optional.empty());

  public JobMeans {
    masked = masked.map(Set::copyOf);
    tools = tools.map(List::copyOf);
  }

  boolean wears(int person) {
    return masked.map(m -> m.contains(person)).orElse(true);
  }

  /** How many of the first so many persons have breathing protection. */
  int masks(int people) {
    return masked.map(m -> (int) m.stream().filter(i -> i < people).count()).orElse(people);
  }

  /**
   * The tools of a kind that do for a step, the best choice first. A vacuum has to pull what the
   * grinder on it asks for, if there is one that does: the floor grinder gets the strongest, others
   * leave it the strongest.
   */
  List<JobTool> suitable(WorkStep step, ToolKind kind) {
    List<JobTool> all = tools.orElse(List.of()).stream().filter(t -> t.kind() == kind).toList();
    if (kind != ToolKind.VACUUM) {
      return all;
    }
    boolean floor = step.type().tools().contains(ToolKind.FLOOR_GRINDER);
    double asked = asked(step, floor ? ToolKind.FLOOR_GRINDER : ToolKind.HAND_GRINDER);
    List<JobTool> strong = all.stream().filter(t -> pull(t) >= asked).toList();
    Comparator<JobTool> weakest = Comparator.comparing(JobMeans::pull);
    return (strong.size() < step.each(kind) ? all : strong)
        .stream().sorted(floor ? weakest.reversed() : weakest).toList();
  }

  /** What the most modest grinder of a kind asks for; nothing for a step without one. */
  private double asked(WorkStep step, ToolKind grinder) {
    return step.type().tools().contains(grinder)
        ? tools.orElse(List.of()).stream()
            .filter(t -> t.kind() == grinder)
            .map(JobTool::airflow)
            .flatMapToDouble(OptionalDouble::stream)
            .min()
            .orElse(0)
        : 0;
  }

  private static double pull(JobTool t) {
    return t.airflow().orElse(0);
  }
}
