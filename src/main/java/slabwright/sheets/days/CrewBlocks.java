package slabwright.sheets.days;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.CautionBlock;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.site.job.JobCrew;
import slabwright.work.SilicaShift;
import slabwright.work.WorkPlan;
import slabwright.work.days.DayPlan;
import slabwright.work.days.PersonRota;
import slabwright.work.days.WorkStep;
import slabwright.work.step.AirEffect;

/** Who the letters of the day plan are, who must not swap, and what has to stand in clean air. */
record CrewBlocks(WorkPlan plan, DayPlan days, SheetContext context) {
  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(context.say("sheets.crew-blocks.crew")));
    blocks.add(new Paragraph(crew()));
    if (days.steps().stream().anyMatch(s -> sparksInVapour(s.task()))) {
      blocks.add(
          new CautionBlock(
              context.say("sheets.crew-blocks.sparks"),
              context.say("sheets.crew-blocks.clean-air")));
    }
    List<SilicaShift> shifts = SilicaShift.of(plan, days);
    if (!shifts.isEmpty()) {
      blocks.add(new Heading(context.say("sheets.crew-blocks.silica")));
      blocks.add(silica(shifts));
      blocks.add(new Paragraph(context.say(SilicaShift.RULE)));
    }
    blocks.add(new Gap(3));
    return blocks;
  }

  private static boolean sparksInVapour(WorkStep task) {
    return task.type().sparks() && task.type().air() instanceof AirEffect.Vapour;
  }

  private String crew() {
    List<JobCrew.Person> persons = plan.site().job().crew().persons();
    List<String> all = new ArrayList<>();
    for (int i = 0; i < days.hours().people(); i++) {
      String letter = PersonRota.letter(i);
      all.add(i < persons.size() ? person(letter, persons.get(i)) : letter);
    }
    String letters = String.join("; ", all);
    return persons.isEmpty()
        ? context.say("sheets.crew-blocks.nobody-named", letters)
        : context.say("sheets.crew-blocks.named", letters);
  }

  private String person(String letter, JobCrew.Person p) {
    String role = p.role().isEmpty() ? context.say("sheets.crew-blocks.no-role") : p.role();
    return Optional.of(p.breathing())
        .filter(b -> !b.isEmpty())
        .map(b -> context.say("sheets.crew-blocks.person-masked", letter, role, p.name(), b))
        .orElseGet(() -> context.say("sheets.crew-blocks.person", letter, role, p.name()));
  }

  private TableBlock silica(List<SilicaShift> shifts) {
    List<List<TableCell>> rows = new ArrayList<>();
    for (SilicaShift s : shifts) {
      String tasks = context.times().works(s.tasks());
      rows.add(
          List.of(
              TableCell.of(context.times().day(s.day().atStartOfDay(), plan.dated())),
              TableCell.of(PersonRota.letter(s.person())),
              s.isOver() ? TableCell.bold(tasks) : TableCell.of(tasks),
              TableCell.of(s.byHand().isZero() ? "" : context.times().works(s.byHand())),
              TableCell.of(context.say(s.swap()))));
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow(context.say("sheets.crew-blocks.day")),
            TableColumn.narrow(context.say("sheets.crew-blocks.who")),
            TableColumn.number(context.say("sheets.crew-blocks.tasks")),
            TableColumn.number(context.say("sheets.crew-blocks.by-hand")),
            TableColumn.words(context.say("sheets.crew-blocks.swap"))),
        rows);
  }
}
