package slabwright.sheets.prep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import slabwright.drawing.CoordinateFrame;
import slabwright.figures.PassageWords;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.CautionBlock;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.sheets.plan.PlanComposer;
import slabwright.sheets.plan.PlanSheet;
import slabwright.sheets.plan.Poster;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;

/**
 * Sheet 2: what is ground by hand, numbered on the plan and listed to tick off; then who grinds
 * what floor, how far a machine of which width gets, and the edges.
 */
public final class PrepSheet {
  private final ReachAnalysis ways;
  private final FloorTakeoff takeoff;
  private final FloorArea area;
  private final SheetContext context;
  private final HandWorkList list;
  private final HandWorkDrawing plan;

  public PrepSheet(ReachAnalysis ways, SheetContext context) {
    this.ways = ways;
    this.takeoff = ways.takeoff();
    this.area = takeoff.area();
    this.context = context;
    this.plan = new HandWorkDrawing(ways, context);
    this.list = new HandWorkList(ways, context.units(), context.words());
  }

  public List<PageDraft> drafts() {
    PlanSheet sheet =
        new PlanSheet(
            context,
            context.say("sheets.prep-sheet.title"),
            subtitle(),
            area.name(),
            CoordinateFrame.SITE,
            takeoff.gross().bounds());
    List<PageDraft> drafts = new ArrayList<>(sheet.drafts(this::draw, blocks()));
    PageDraft more =
        new PageDraft(
            context.say("sheets.prep-sheet.more-title"),
            subtitle(),
            area.name(),
            Optional.empty(),
            List.of());
    drafts.addAll(ColumnPages.of(context, more, new PrepTables(ways, context).blocks()));
    return drafts;
  }

  /** The hand work alone, as large as the paper allows, for the wall. */
  public Poster poster() {
    return new PlanSheet(
            context,
            context.say("sheets.prep-sheet.poster"),
            context.say("sheets.prep-sheet.poster-subtitle"),
            area.name(),
            CoordinateFrame.SITE,
            takeoff.gross().bounds())
        .poster(
            this::draw,
            List.of(
                new Heading(context.say("sheets.prep-sheet.list")),
                table(),
                totalWhy(),
                new Gap(3)),
            List.of(new Heading(context.say("sheets.prep-sheet.key")), key()));
  }

  private String subtitle() {
    if (area.machines().isEmpty()) {
      return context.say("sheets.prep-sheet.no-machine");
    }
    String machines =
        area.machines().stream()
            .map(m -> context.say("sheets.prep-sheet.machine", m.name(), context.length(m.strip())))
            .collect(Collectors.joining(", "));
    String from =
        area.doorways().stream()
            .filter(Doorway::wayIn)
            .map(new PassageWords(area, context.units(), context.words())::doorway)
            .collect(Collectors.joining(", "));
    return from.isEmpty()
        ? context.say("sheets.prep-sheet.subtitle-no-way-in", machines)
        : context.say("sheets.prep-sheet.subtitle", machines, from);
  }

  private void draw(PlanComposer sketch) {
    plan.draw(sketch);
    numbers(sketch);
    plan.gaps(sketch);
    plan.bends(sketch);
  }

  private void numbers(PlanComposer sketch) {
    double off = 6.4 * context.type().k();
    int n = 0;
    for (HandWorkItem item : numbered(list)) {
      n++;
      sketch.placeNumber(
          item.at().orElseThrow(), item.candidates(sketch.view(), off), Integer.toString(n));
    }
  }

  /** The items with a place, in the order of their numbers. */
  static List<HandWorkItem> numbered(HandWorkList list) {
    return all(list).stream().filter(p -> p.at().isPresent()).toList();
  }

  private static List<HandWorkItem> all(HandWorkList list) {
    List<HandWorkItem> all = new ArrayList<>(list.edges());
    all.addAll(list.along());
    all.addAll(list.pieces());
    return all;
  }

  private List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(context.say("sheets.prep-sheet.list")));
    blocks.add(table());
    blocks.add(totalWhy());
    blocks.add(new Gap(3));
    blocks.add(new Heading(context.say("sheets.prep-sheet.key")));
    blocks.add(key());
    blocks.add(new Gap(3));
    blocks.add(
        new CautionBlock(
            context.say("sheets.prep-sheet.dust"), context.say("sheets.prep-sheet.dust-caution")));
    return blocks;
  }

  private Block table() {
    List<List<TableCell>> rows = new ArrayList<>();
    int n = 0;
    for (List<HandWorkItem> same : HandWorkGroups.of(all(list))) {
      int first = n + 1;
      n += (int) same.stream().filter(i -> i.at().isPresent()).count();
      rows.add(row(same, first, n));
    }
    return new TableBlock(columns(), rows, total());
  }

  /** One thing, or many of one kind, whose numbers follow each other. */
  private List<TableCell> row(List<HandWorkItem> same, int first, int last) {
    TableCell number =
        last < first
            ? TableCell.of("")
            : first == last
                ? new TableCell.Ringed(Integer.toString(first))
                : TableCell.of(context.say("sheets.prep-sheet.numbers", first, last));
    OptionalDouble edge =
        same.get(0).edge().isPresent() ? OptionalDouble.of(length(same)) : OptionalDouble.empty();
    double area = same.stream().mapToDouble(i -> i.area().orElse(0)).sum();
    return List.of(
        new TableCell.Tick(),
        number,
        TableCell.of(said(same)),
        TableCell.of(edge.isPresent() ? context.length(edge.getAsDouble()) : ""),
        TableCell.of(same.get(0).area().isPresent() ? context.bareArea(area) : ""));
  }

  /** With the length of each where all are alike: what is measured along is seen from the row. */
  private String said(List<HandWorkItem> same) {
    HandWorkItem one = same.get(0);
    if (same.size() == 1) {
      return one.words();
    }
    Set<String> lengths = new TreeSet<>();
    same.forEach(i -> i.edge().ifPresent(e -> lengths.add(context.length(e))));
    return lengths.size() == 1
        ? context.say(
            "sheets.prep-sheet.many-alike", one.kind(), same.size(), lengths.iterator().next())
        : context.say("sheets.prep-sheet.many", one.kind(), same.size());
  }

  private List<TableColumn> columns() {
    return List.of(
        TableColumn.narrow(""),
        TableColumn.narrow(""),
        TableColumn.words(context.say("sheets.prep-sheet.what")),
        TableColumn.number(context.say("sheets.prep-sheet.edge")),
        TableColumn.number(context.areaUnit()));
  }

  /** One line on why this sum and the take-off's edges differ; nothing where they agree. */
  private Block totalWhy() {
    double along = length(list.along());
    double left = takeoff.edgeLength() - length(list.edges());
    if (along < 1 && left < 1) {
      return new Gap(0);
    } else if (along < 1) {
      return new Paragraph(context.say("sheets.prep-sheet.total-why-less", context.length(left)));
    } else if (left < 1) {
      return new Paragraph(context.say("sheets.prep-sheet.total-why-more", context.length(along)));
    }
    return new Paragraph(
        context.say("sheets.prep-sheet.total-why", context.length(along), context.length(left)));
  }

  private static double length(List<HandWorkItem> items) {
    return items.stream().mapToDouble(e -> e.edge().orElse(0)).sum();
  }

  private List<TableCell> total() {
    double length = length(all(list));
    return List.of(
        TableCell.of(""),
        TableCell.of(""),
        TableCell.of(context.say("sheets.prep-sheet.total")),
        TableCell.of(context.length(length)),
        TableCell.of(context.bareArea(takeoff.asFound().hand().area())));
  }

  private Block key() {
    return plan.key();
  }
}
