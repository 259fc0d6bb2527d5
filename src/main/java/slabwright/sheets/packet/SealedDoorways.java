package slabwright.sheets.packet;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.job.JobCrew;
import slabwright.units.Message;
import slabwright.work.days.DayPlan;
import slabwright.work.days.PersonRota;
import slabwright.work.days.ScheduledStep;
import slabwright.work.step.StepKind;

/** The doorways that the plan counts on being taped shut, and who does it. */
public record SealedDoorways(PacketContents job) {

  /** One sentence; empty where no doorway is sealed. */
  public Optional<Message> said() {
    List<FloorArea> areas =
        job.site().areas().stream()
            .filter(a -> a.doorways().stream().anyMatch(d -> d.passage().sealed()))
            .toList();
    String doors =
        areas.stream()
            .flatMap(a -> a.doorways().stream())
            .filter(d -> d.passage().sealed())
            .map(Doorway::name)
            .distinct()
            .collect(Collectors.joining(", "));
    String who =
        areas.stream()
            .flatMap(a -> person(a).stream())
            .distinct()
            .map(this::named)
            .collect(Collectors.joining(", "));
    if (doors.isEmpty()) {
      return Optional.empty();
    }
    return Optional.of(
        who.isEmpty()
            ? Message.of("sheets.sealed-doorways.by-the-lead", doors)
            : Message.of("sheets.sealed-doorways.by", who, doors));
  }

  /** Who masks the walls; without masking who lays the first coat. */
  private Optional<Integer> person(FloorArea area) {
    return job
        .work()
        .days()
        .maybe()
        .or(() -> job.work().outlook().order().maybe())
        .map(DayPlan::steps)
        .stream()
        .flatMap(List::stream)
        .filter(s -> s.task().type().isOn(area.id()) && rank(s) < Integer.MAX_VALUE)
        .min(Comparator.comparingInt(SealedDoorways::rank))
        .flatMap(s -> s.who().persons().stream().findFirst());
  }

  private static int rank(ScheduledStep step) {
    StepKind kind = step.task().type().kind();
    if (kind == StepKind.MASK_WALLS) {
      return 0;
    }
    return kind == StepKind.COAT || kind == StepKind.MIST_COAT ? 1 : Integer.MAX_VALUE;
  }

  private String named(int person) {
    List<JobCrew.Person> crew = job.site().job().crew().persons();
    String name = person < crew.size() ? crew.get(person).name() : "";
    String letter = PersonRota.letter(person);
    return name.isBlank() ? letter : job.words().say("sheets.crew-day.person", letter, name);
  }
}
