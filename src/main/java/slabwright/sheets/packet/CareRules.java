package slabwright.sheets.packet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import slabwright.sheets.air.RuleBlock;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Heading;
import slabwright.units.Message;
import slabwright.work.AreaWorkPlan;
import slabwright.work.rule.RuleNote;

/**
 * The published rules that ask for care on this job: dust, noise, slip, moisture, breathing. Equal
 * rules of several floors stand once, under the floors' names.
 */
public record CareRules(PacketContents job) {
  public List<Block> blocks() {
    Map<List<String>, List<RuleNote>> byFloors = new LinkedHashMap<>();
    notes().forEach((n, floors) -> byFloors.computeIfAbsent(floors, k -> new ArrayList<>()).add(n));
    List<Block> blocks = new ArrayList<>();
    byFloors.forEach(
        (floors, list) -> {
          blocks.add(new Heading(String.join(", ", floors)));
          list.forEach(n -> blocks.add(new RuleBlock(n, job.words())));
        });
    return blocks;
  }

  /** Which subjects they have, for a paper that sends its reader to them; empty without any. */
  public Optional<String> elsewhere() {
    String subjects =
        notes().keySet().stream()
            .map(RuleNote::subject)
            .map(this::said)
            .distinct()
            .collect(Collectors.joining("; "));
    return subjects.isEmpty()
        ? Optional.empty()
        : Optional.of(job.words().say("sheets.care-rules.elsewhere", subjects));
  }

  private String said(Message subject) {
    return job.words().say(subject);
  }

  private Map<RuleNote, List<String>> notes() {
    Map<RuleNote, List<String>> notes = new LinkedHashMap<>();
    for (AreaWorkPlan area : job.work().areas()) {
      area.notes().stream()
          .filter(n -> n.verdict() != RuleNote.Verdict.FINE)
          .forEach(n -> notes.computeIfAbsent(n, k -> new ArrayList<>()).add(area.name()));
    }
    return notes;
  }
}
