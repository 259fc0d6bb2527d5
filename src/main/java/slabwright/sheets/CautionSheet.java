package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.work.AirWork;
import slabwright.work.AreaWork;
import slabwright.work.WorkPlan;
import slabwright.work.rule.RuleNote;

/** Sheet 7: air, ignition, dust and the rules that apply on one floor area. */
final class CautionSheet {
  private final AreaWork work;
  private final WorkPlan plan;
  private final SheetContext context;

  CautionSheet(AreaWork work, WorkPlan plan, SheetContext context) {
    this.work = work;
    this.plan = plan;
    this.context = context;
  }

  List<Draft> drafts() {
    Draft draft =
        new Draft(
            "7",
            "Air, ignition and other cautions",
            "Screening figures and the rules they are held against; numbers are never softened",
            work.name(),
            Optional.empty(),
            List.of());
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Prose(WorkPlan.NOTICE));
    blocks.add(new Prose(plan.book().origin()));
    blocks.add(new Gap(2));
    Optional<AirWork> air = work.air().maybe();
    if (air.isPresent()) {
      air(blocks, air.get());
    } else {
      blocks.add(new Heading("Air"));
      blocks.add(new Caution("Not computed", work.air().text(a -> "")));
    }
    rules(blocks);
    return ColumnPages.of(context.page(), draft, blocks);
  }

  private void air(List<Block> blocks, AirWork air) {
    air.screening()
        .ifPresent(
            s -> new AirColumn(s, air.assumption(), context.units(), Clock.of(plan)).addTo(blocks));
    if (air.fire().applies()) {
      blocks.add(
          new Caution(
              "Fire code: flammable finishes",
              String.join("; ", air.fire().reasons())
                  + ". The chapter on flammable finishes applies: ask the fire authority."));
    }
  }

  /** Whether there is solvent to be careful with. */
  static boolean hasSolvent(AirWork air) {
    return air.screening().isPresent() || air.fire().applies();
  }

  static void checklist(List<Block> blocks, String heading, List<String> lines) {
    blocks.add(new Heading(heading));
    List<List<Cell>> rows =
        lines.stream().map(l -> List.<Cell>of(new Cell.Tick(), Cell.of(l))).toList();
    blocks.add(Table.of(List.of(Column.narrow(""), Column.words("")), rows));
    blocks.add(new Gap(3));
  }

  private void rules(List<Block> blocks) {
    if (work.notes().isEmpty()) {
      return;
    }
    blocks.add(new Heading("Rules that apply"));
    for (RuleNote n : work.notes()) {
      blocks.add(new RuleBlock(n));
    }
    blocks.add(new Gap(3));
  }

  /** The sign of a verdict. */
  static String sign(RuleNote.Verdict verdict) {
    return switch (verdict) {
      case FINE -> "✓";
      case LOOK -> "!";
      case NOT_MET -> "✕";
      case UNKNOWN -> "?";
    };
  }
}
