package slabwright.sheets.packet;

import java.util.List;
import java.util.stream.Collectors;
import slabwright.words.Words;
import slabwright.work.AreaWorkPlan;
import slabwright.work.HeldGroup;
import slabwright.work.HeldStep;
import slabwright.work.WorkPlan;

/** What is held of a job, for readers who have to know what is not done yet and until when. */
public record HeldLines(WorkPlan plan, Words words) {
  private List<HeldGroup> groups() {
    return HeldGroup.of(plan.outlook().held());
  }

  /** The names of what is held for a reason of its own; empty where nothing is. */
  public List<String> names() {
    return groups().stream().map(this::named).distinct().toList();
  }

  /** Each with its floor, its reason and what frees it. */
  List<String> told() {
    return groups().stream().map(this::told).toList();
  }

  private String told(HeldGroup held) {
    String area =
        plan.area(held.first().area()).map(AreaWorkPlan::name).orElse(held.first().area());
    return words.say(
        "sheets.held-lines.told",
        area,
        held.worst().why(),
        held.all().size() - 1,
        held.worst().frees().stream().map(words::say).collect(Collectors.joining("; ")));
  }

  private String named(HeldGroup held) {
    String first = named(held.first());
    int more = held.all().size() - 1;
    return more == 0 ? first : words.say("sheets.crew-day.held-many", first, more);
  }

  private String named(HeldStep h) {
    return plan.outlook()
        .order()
        .maybe()
        .flatMap(d -> d.step(h.step()))
        .map(s -> words.say(s.task().name()) + " (" + s.task().area() + ")")
        .orElse(h.step());
  }
}
