package slabwright.sheets.packet.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.TimeFormat;
import slabwright.words.Words;
import slabwright.work.AreaWorkPlan;
import slabwright.work.MeterWatch;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.PersonRota;
import slabwright.work.days.ScheduledStep;

/**
 * What the crew does before a day's first row, so that a can is opened, and a coat begun, at the
 * hour that its row tells and not before all that has to stand is standing.
 */
record CrewOpening(PacketContents job, TimeFormat times) {

  CrewDayText.Row row(CrewDay day, CrewDay.Opening opening) {
    Words words = job.words();
    String who =
        opening.persons().stream().map(PersonRota::letter).collect(Collectors.joining(", "));
    String begins = times.hour(opening.span().end());
    List<String> details = new ArrayList<>();
    firstCan(day)
        .map(w -> words.say("sheets.crew-opening.first-can", times.hour(w.span().start())))
        .ifPresent(details::add);
    List<CrewDay.Work> atOnce =
        day.work().stream().filter(w -> w.span().start().equals(opening.span().end())).toList();
    CrewPutAway away = CrewPutAway.of(job.work());
    if (atOnce.stream()
        .map(CrewDay.Work::first)
        .anyMatch(p -> away.before(p).isPresent() || away.out(p).isPresent())) {
      details.add(words.say("sheets.crew-opening.put-away", begins));
    }
    if (atOnce.stream().map(w -> w.first().step()).anyMatch(this::isMixed)) {
      details.add(words.say("sheets.crew-opening.first-batch", begins));
    }
    return new CrewDayText.Row(
        times.hour(opening.span().start()),
        who,
        words.say("sheets.crew-opening.set-up", begins),
        details,
        false);
  }

  /** The first row of the day in which solvent is open. */
  private Optional<CrewDay.Work> firstCan(CrewDay day) {
    return day.work().stream()
        .filter(
            w ->
                w.parts().stream()
                    .anyMatch(p -> MeterWatch.isAskedFor(job.work(), p.step().task().type())))
        .findFirst();
  }

  private boolean isMixed(ScheduledStep step) {
    return step.task().type().coat().stream()
        .flatMap(c -> coats(step).filter(p -> p.job().place() == c.place()))
        .anyMatch(p -> p.mixed().isPresent());
  }

  private Stream<CoatPlan> coats(ScheduledStep step) {
    return job.work().area(step.task().type().areaId()).stream()
        .map(AreaWorkPlan::coats)
        .flatMap(List::stream);
  }
}
