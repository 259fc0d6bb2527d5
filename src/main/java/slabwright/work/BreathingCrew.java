package slabwright.work;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import slabwright.site.job.JobCrew;
import slabwright.work.air.BreathingProtection;

/**
 * The breathing protection of those of the crew that somebody named it for.
 *
 * @param worn the weakest last
 */
record BreathingCrew(List<BreathingProtection> worn) {
  BreathingCrew {
    worn =
        worn.stream().sorted(Comparator.comparing(BreathingProtection::factor).reversed()).toList();
  }

  static BreathingCrew of(JobCrew crew) {
    return new BreathingCrew(
        crew.persons().stream()
            .flatMap(p -> BreathingProtection.named(p.breathing()).stream())
            .toList());
  }

  /** Who of the crew has any, by number from 0. */
  static Set<Integer> numbers(JobCrew crew) {
    return IntStream.range(0, crew.persons().size())
        .boxed()
        .filter(i -> BreathingProtection.named(crew.persons().get(i).breathing()).isPresent())
        .collect(Collectors.toSet());
  }

  /** The weakest of those who would do a step of some people; empty when too few have any. */
  Optional<BreathingProtection> protection(int people) {
    return people <= worn.size() ? Optional.of(worn.get(people - 1)) : Optional.empty();
  }
}
