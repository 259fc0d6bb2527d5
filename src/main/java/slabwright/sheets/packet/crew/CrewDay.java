package slabwright.sheets.packet.crew;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.units.SortedCopy;
import slabwright.work.ClosedAir;
import slabwright.work.VapourLeft;
import slabwright.work.days.ScheduledStep;
import slabwright.work.days.TimeSpan;

/**
 * One working day of the crew.
 *
 * @param number from 1
 * @param on the day; nobody's where the plan has no dates
 * @param entries in the order of their start
 */
record CrewDay(int number, LocalDate on, List<Entry> entries) {
  CrewDay {
    entries = List.copyOf(entries);
  }

  /** What stands in one row of a day. */
  sealed interface Entry {
    TimeSpan span();
  }

  /** Steps that one row tells: several only where they follow each other as one job. */
  record Work(List<Part> parts) implements Entry {
    Work {
      parts = List.copyOf(parts);
    }

    Part first() {
      return parts.get(0);
    }

    Part last() {
      return parts.get(parts.size() - 1);
    }

    @Override
    public TimeSpan span() {
      return new TimeSpan(first().span().start(), last().span().end());
    }
  }

  /** People are out of a floor area until its air is clear. */
  record Closed(ClosedAir air, TimeSpan span) implements Entry {}

  /**
   * The crew is there before the first row and sets up.
   *
   * @param persons by number from 0
   */
  record Opening(TimeSpan span, Set<Integer> persons) implements Entry {
    Opening {
      persons = SortedCopy.of(persons);
    }
  }

  /** Vapour that still counts when the crew leaves. */
  record Left(VapourLeft air, TimeSpan span) implements Entry {}

  /**
   * The part of a step that falls on this day.
   *
   * @param before when the part before it ended: ahead of a break, or on an earlier day
   * @param after when the part after it begins
   */
  record Part(
      ScheduledStep step,
      TimeSpan span,
      Optional<LocalDateTime> before,
      Optional<LocalDateTime> after) {}

  /** The same day with only the entries of these rows, the last not among them. */
  CrewDay rows(int from, int to) {
    return new CrewDay(number, on, entries.subList(from, to));
  }

  /** Whether no more than one row tells of something to do or to keep out of. */
  boolean isShort() {
    return entries.stream().filter(e -> !(e instanceof Opening)).count() < 2;
  }

  /** Whether its first row tells of setting up: it stands with the one after it. */
  boolean isOpened() {
    return !entries.isEmpty() && entries.get(0) instanceof Opening;
  }

  List<Work> work() {
    return entries.stream().filter(Work.class::isInstance).map(Work.class::cast).toList();
  }

  List<Closed> closed() {
    return entries.stream().filter(Closed.class::isInstance).map(Closed.class::cast).toList();
  }

  List<ScheduledStep> steps() {
    return work().stream().flatMap(w -> w.parts().stream()).map(Part::step).distinct().toList();
  }
}
