package slabwright.sheets.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.Ink;
import slabwright.drawing.Symbol;
import slabwright.shape.Bounds;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.ColumnLayout;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.PageFrame;
import slabwright.sheets.page.Scale;
import slabwright.sheets.page.SheetContext;

/**
 * A sheet with one plan and a column of blocks: one page where the plan fits at a scale to work
 * from, else tiles with join marks and the blocks on pages of their own.
 */
public record PlanSheet(
    SheetContext context,
    String title,
    String subtitle,
    String area,
    CoordinateFrame frame,
    Bounds model) {
  private static final double MARGIN = 15.5;

  /** Width of a key beside a poster's plan, and of the space before it, mm. */
  private static final double KEY = 74;

  private static final double GAP = 6;

  /** Height of a key under a poster's plan and of the space before it, mm. */
  private static final double UNDER = 66;

  /** A poster takes no more pages than this where a standard scale is small enough. */
  private static final int FEW = 4;

  public List<PageDraft> drafts(Consumer<PlanComposer> draw, List<Block> blocks) {
    PageFrame page = context.page();
    double margin = MARGIN * context.type().k();
    PlanTiling one = PlanTiling.of(frame, model, page.field(), margin, context.units());
    return one.tiled()
        ? tiles(PlanTiling.of(frame, model, page.drawn(), margin, context.units()), draw, blocks)
        : single(one, draw, blocks);
  }

  /**
   * The plan as large as a whole page allows, with the blocks beside it where that makes the plan
   * no smaller and all of them have room; else they are listed apart, and the key alone stands
   * beside the plan where it has room. A floor that would take several pages at a working scale is
   * one page at a smaller one, where there is such a scale: nobody holds nine tiles together.
   */
  public Poster poster(Consumer<PlanComposer> draw, List<Block> blocks, List<Block> key) {
    PageFrame page = context.page();
    PlanTiling beside = PlanTiling.of(frame, model, page.field(), MARGIN, context.units());
    PlanTiling whole = PlanTiling.of(frame, model, page.drawn(), MARGIN, context.units());
    boolean smaller = beside.scale().denominator() > whole.scale().denominator();
    List<Block> all = new ArrayList<>(blocks);
    all.addAll(key);
    if (!beside.tiled() && !smaller && ColumnLayout.beside(page, all).size() == 1) {
      return new Poster(title, area, single(beside, draw, all), List.of());
    }
    return keyed(whole, draw, key)
        .map(k -> new Poster(title, area, List.of(k), blocks))
        .or(() -> whole.tiled() ? together(draw, blocks, key) : Optional.empty())
        .orElseGet(() -> new Poster(title, area, tiles(few(whole), draw), all));
  }

  /** Nobody holds twenty pages together: the same smaller, where a page is too small for it all. */
  private PlanTiling few(PlanTiling plan) {
    return plan.across() * plan.down() <= FEW
        ? plan
        : PlanTiling.onFew(frame, model, context.page().drawn(), MARGIN, context.units(), FEW);
  }

  /** The whole plan with its key to the right of it, where that makes it no smaller. */
  private Optional<PageDraft> keyed(
      PlanTiling whole, Consumer<PlanComposer> draw, List<Block> key) {
    Bounds d = context.page().drawn();
    Bounds left = new Bounds(d.minX(), d.minY(), d.maxX() - KEY - GAP, d.maxY());
    PlanTiling plan = PlanTiling.of(frame, model, left, MARGIN, context.units());
    if (key.isEmpty()
        || whole.tiled()
        || plan.tiled()
        || plan.scale().denominator() > whole.scale().denominator()) {
      return Optional.empty();
    }
    Bounds column = new Bounds(d.maxX() - KEY, d.minY(), d.maxX(), d.maxY());
    return ColumnLayout.within(column, context.type(), key)
        .map(
            k -> {
              List<Ink> inks = new ArrayList<>(tile(plan, 0, 0, draw));
              inks.addAll(k);
              return draft(title, plan.scale()).withInks(inks);
            });
  }

  /** The whole floor on one page, its key under it where the floor is low enough. */
  private Optional<Poster> together(
      Consumer<PlanComposer> draw, List<Block> blocks, List<Block> key) {
    Bounds d = context.page().drawn();
    Bounds upper = new Bounds(d.minX(), d.minY(), d.maxX(), d.maxY() - UNDER);
    Bounds lower = new Bounds(d.minX(), d.maxY() - UNDER + GAP, d.minX() + KEY, d.maxY());
    Optional<List<Ink>> under = ColumnLayout.within(lower, context.type(), key);
    Optional<PlanTiling> over =
        under.flatMap(k -> PlanTiling.whole(frame, model, upper, MARGIN, context.units()));
    if (over.isPresent()) {
      List<Ink> inks = new ArrayList<>(tile(over.get(), 0, 0, draw));
      inks.addAll(under.get());
      PageDraft page = draft(title, over.get().scale()).withInks(inks);
      return Optional.of(new Poster(title, area, List.of(page), blocks));
    }
    List<Block> all = new ArrayList<>(blocks);
    all.addAll(key);
    return PlanTiling.whole(frame, model, d, MARGIN, context.units())
        .map(p -> new Poster(title, area, tiles(p, draw), all));
  }

  private List<PageDraft> single(PlanTiling plan, Consumer<PlanComposer> draw, List<Block> blocks) {
    PageDraft draft = draft(title, plan.scale());
    List<List<Ink>> columns = ColumnLayout.beside(context.page(), blocks);
    List<Ink> inks = new ArrayList<>(tile(plan, 0, 0, draw));
    inks.addAll(columns.get(0));
    List<PageDraft> drafts = new ArrayList<>();
    drafts.add(draft.withInks(inks));
    columns.stream().skip(1).forEach(c -> drafts.add(draft.continued(c, context.words())));
    return drafts;
  }

  private List<PageDraft> tiles(PlanTiling plan, Consumer<PlanComposer> draw, List<Block> blocks) {
    List<PageDraft> drafts = new ArrayList<>(tiles(plan, draw));
    int n =
        context.page().form() == PageFrame.Form.PORTRAIT ? 1 : context.page().width() > 400 ? 3 : 2;
    for (List<Ink> page : ColumnLayout.whole(context.page(), n, blocks)) {
      drafts.add(draft(title, plan.scale()).continued(page, context.words()));
    }
    return drafts;
  }

  private List<PageDraft> tiles(PlanTiling plan, Consumer<PlanComposer> draw) {
    List<PageDraft> drafts = new ArrayList<>();
    for (int row = 0; row < plan.down(); row++) {
      for (int column = 0; column < plan.across(); column++) {
        String named = plan.tiled() ? tileTitle(plan, column, row) : title;
        List<Ink> inks = new ArrayList<>(tile(plan, column, row, draw));
        inks.addAll(JoinMarks.of(plan, column, row));
        drafts.add(draft(named, plan.scale()).withInks(inks));
      }
    }
    return drafts;
  }

  /** With a letter for the row and a number for the column, such as A1. */
  private String tileTitle(PlanTiling plan, int column, int row) {
    String name = Character.toString('A' + row) + (column + 1);
    return context.say("sheets.plan-sheet.tile", title, name, plan.across(), plan.down());
  }

  private List<Ink> tile(PlanTiling plan, int column, int row, Consumer<PlanComposer> draw) {
    PlanComposer sketch = new PlanComposer(plan.view(column, row), plan.field(), context.type());
    JoinMarks.of(plan, column, row).stream()
        .filter(Symbol.class::isInstance)
        .forEach(s -> sketch.keepOff((Symbol) s));
    draw.accept(sketch);
    return sketch.inks();
  }

  private PageDraft draft(String named, Scale scale) {
    return new PageDraft(named, subtitle, area, Optional.of(scale), List.of());
  }
}
