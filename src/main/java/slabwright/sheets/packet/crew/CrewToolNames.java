package slabwright.sheets.packet.crew;

import java.util.Locale;
import java.util.stream.Collectors;
import slabwright.words.Words;
import slabwright.work.days.JobTool;
import slabwright.work.step.ToolKind;

/** The very tools of a row, by the names that the shop gives them. */
record CrewToolNames(Words words) {
  String of(CrewDay.Work work) {
    return work.parts().stream()
        .flatMap(p -> p.step().who().tools().stream())
        .distinct()
        .map(this::tool)
        .collect(Collectors.joining(", "))
        .replaceAll("(?<=\\d) (?=\\w)", "\u00a0");
  }

  /**
   * A machine as the plan names it; a floor grinder that is called so in another language has its
   * kind before it, the same word as the shop's.
   */
  String machine(String name) {
    String lower = name.toLowerCase(Locale.ROOT);
    String kind = words.say(ToolKind.FLOOR_GRINDER.label()).toLowerCase(Locale.ROOT);
    return lower.contains(ToolKind.FLOOR_GRINDER.word()) && !lower.contains(kind)
        ? words.say(JobTool.kindAndName(ToolKind.FLOOR_GRINDER, name))
        : name;
  }

  /** A name in another language than the crew's has its kind before it, in theirs. */
  private String tool(JobTool tool) {
    String called = words.say(tool.called());
    String kind = words.say(tool.kind().label());
    return called.toLowerCase(Locale.ROOT).contains(kind.toLowerCase(Locale.ROOT))
        ? called
        : words.say(tool.kindAndName());
  }
}
