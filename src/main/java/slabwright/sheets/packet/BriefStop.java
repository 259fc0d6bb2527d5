package slabwright.sheets.packet;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import slabwright.site.job.Stop;
import slabwright.units.Message;
import slabwright.words.Words;
import slabwright.work.AreaWorkPlan;
import slabwright.work.WorkPlan;
import slabwright.work.stop.JobStop;

/**
 * Why a job can't start in one line: which floor, which hazard, where the reasons stand in full.
 * For each page after the first, which somebody may hold alone.
 */
public record BriefStop(WorkPlan plan, Words words) {

  /** That it can't start, then the line. */
  public List<String> lines() {
    return List.of(words.say("sheets.crew-day.do-not-start"), reasons());
  }

  /** The line alone: each floor, its hazards by name, and where the reasons stand in full. */
  String reasons() {
    List<String> where = new ArrayList<>();
    Set<Message> told = new LinkedHashSet<>();
    for (AreaWorkPlan area : plan.areas()) {
      List<JobStop> open = area.stops().stream().filter(JobStop::isOpen).toList();
      open.forEach(s -> told.add(s.reason()));
      if (!open.isEmpty()) {
        where.add(words.say("sheets.brief-stop.floor", area.name(), named(open)));
      }
    }
    if (hasOther(told)) {
      where.add(words.say("sheets.brief-stop.vapour"));
    }
    return words.say("sheets.brief-stop.reasons", String.join("; ", where));
  }

  /** That it can't start and the hazards of all floors, for a poster's head; the longest first. */
  public List<String> heads() {
    List<String> all = hazards();
    List<String> heads = new ArrayList<>();
    for (int n = all.size(); n > 0; n--) {
      heads.add(
          words.say(
              "sheets.brief-stop.floor",
              words.say("sheets.crew-day.do-not-start"),
              String.join(", ", all.subList(0, n))));
    }
    return heads;
  }

  /** The hazards of all floors together, each once. */
  List<String> hazards() {
    List<JobStop> open =
        plan.areas().stream().flatMap(a -> a.stops().stream()).filter(JobStop::blocks).toList();
    List<String> all = new ArrayList<>(open.stream().map(s -> name(s.kind())).distinct().toList());
    if (hasOther(open.stream().map(JobStop::reason).collect(Collectors.toSet()))) {
      all.add(words.say("sheets.brief-stop.vapour"));
    }
    return all;
  }

  /** What is no question of a floor is the vapour: it is over its limit or does not clear. */
  private boolean hasOther(Set<Message> told) {
    return plan.outlook().cannotStart().stream().anyMatch(m -> !told.contains(m));
  }

  private String named(List<JobStop> open) {
    return open.stream().map(s -> name(s.kind())).distinct().collect(Collectors.joining(", "));
  }

  private String name(Stop.Kind kind) {
    return switch (kind) {
      case ASBESTOS -> words.say("sheets.brief-stop.asbestos");
      case LEAD_PAINT -> words.say("sheets.brief-stop.lead");
      case SLAB_BEFORE_DRILLING -> words.say("sheets.brief-stop.slab");
      case FIRE_PERMIT -> words.say("sheets.brief-stop.permit");
      case OWNERS_SURVEY -> words.say("sheets.brief-stop.survey");
    };
  }
}
