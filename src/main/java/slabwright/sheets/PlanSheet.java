package slabwright.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import slabwright.drawing.Frame;
import slabwright.drawing.Ink;
import slabwright.drawing.Symbol;
import slabwright.shape.Bounds;

/**
 * A sheet with one plan and a column of blocks: one page where the plan fits at a scale to work
 * from, else tiles with join marks and the blocks on pages of their own.
 */
record PlanSheet(
    SheetContext context,
    String numeral,
    String title,
    String subtitle,
    String area,
    Frame frame,
    Bounds model) {
  private static final double MARGIN = 15.5;

  List<Draft> drafts(Consumer<Sketch> draw, List<Block> blocks) {
    PageFrame page = context.page();
    double margin = MARGIN * context.type().k();
    PlanView one = PlanView.of(frame, model, page.field(), margin, context.units());
    return one.tiled()
        ? tiles(PlanView.of(frame, model, page.body(), margin, context.units()), draw, blocks)
        : single(one, draw, blocks);
  }

  private List<Draft> single(PlanView plan, Consumer<Sketch> draw, List<Block> blocks) {
    Draft draft = draft(title, plan.scale());
    List<List<Ink>> columns = Columns.beside(context.page(), blocks);
    List<Ink> inks = new ArrayList<>(tile(plan, 0, 0, draw));
    inks.addAll(columns.get(0));
    List<Draft> drafts = new ArrayList<>();
    drafts.add(draft.withInks(inks));
    columns.stream().skip(1).forEach(c -> drafts.add(draft.continued(c)));
    return drafts;
  }

  private List<Draft> tiles(PlanView plan, Consumer<Sketch> draw, List<Block> blocks) {
    List<Draft> drafts = new ArrayList<>();
    for (int row = 0; row < plan.down(); row++) {
      for (int column = 0; column < plan.across(); column++) {
        String which = plan.tiled() ? ", tile " + tileName(plan, column, row) : "";
        List<Ink> inks = new ArrayList<>(tile(plan, column, row, draw));
        inks.addAll(JoinMarks.of(plan, column, row));
        drafts.add(draft(title + which, plan.scale()).withInks(inks));
      }
    }
    int n = context.page().paper().width() > 400 ? 3 : 2;
    for (List<Ink> page : Columns.whole(context.page(), n, blocks)) {
      drafts.add(draft(title, plan.scale()).continued(page));
    }
    return drafts;
  }

  /** A letter for the row and a number for the column, such as A1. */
  private static String tileName(PlanView plan, int column, int row) {
    String name = Character.toString('A' + row) + (column + 1);
    return name + " of " + plan.across() + " × " + plan.down();
  }

  private List<Ink> tile(PlanView plan, int column, int row, Consumer<Sketch> draw) {
    Sketch sketch = new Sketch(plan.view(column, row), plan.field(), context.type());
    JoinMarks.of(plan, column, row).stream()
        .filter(Symbol.class::isInstance)
        .forEach(s -> sketch.keepOff((Symbol) s));
    draw.accept(sketch);
    return sketch.inks();
  }

  private Draft draft(String named, Scale scale) {
    return new Draft(numeral, named, subtitle, area, Optional.of(scale), List.of());
  }
}
