package slabwright.sheets.packet.client;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.BulletBlock;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.DenseBlock;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.PairBlock;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.units.Message;
import slabwright.work.AreaWorkPlan;
import slabwright.work.handover.Reopening;

/** What is seen to before, when each floor is shut and may be walked on, and how it is kept. */
final class DatesPage {
  /** More floors than these are not shown side by side. */
  private static final int BESIDE = 3;

  private final PacketContents job;
  private final SheetContext context;

  DatesPage(PacketContents job, SheetContext context) {
    this.job = job;
    this.context = context;
  }

  List<PageDraft> drafts() {
    PageDraft draft =
        new PageDraft(
            context.say("sheets.dates-page.title"),
            context.say("sheets.dates-page.subtitle"),
            "",
            Optional.empty(),
            List.of());
    List<Block> before = new BeforeBlocks(job, context).blocks();
    List<Block> after = after();
    if (before.isEmpty() && after.isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>(before);
    blocks.addAll(after);
    List<PageDraft> pages = ColumnPages.of(context, draft, blocks);
    if (pages.size() == 1) {
      return pages;
    }
    blocks.replaceAll(DenseBlock::new);
    List<PageDraft> dense = ColumnPages.of(context, draft, blocks);
    return dense.size() < pages.size() ? dense : pages;
  }

  /** When the floors may be walked on, and how they are kept; empty where none gets a coat. */
  private List<Block> after() {
    List<Block> dates = dates();
    if (dates.isEmpty()) {
      return List.of();
    }
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(context.say("sheets.dates-page.walk")));
    blocks.addAll(dates);
    if (!job.work().dated()) {
      blocks.add(new Paragraph(context.say("sheets.dates-page.not-dated")));
    }
    blocks.add(
        new Paragraph(
            context.say("sheets.dates-page.temperature")
                + " "
                + context.say("sheets.dates-page.practice")
                + waits()));
    blocks.addAll(care());
    return blocks;
  }

  /** Which floor waits for which, in the same paragraph; empty where none does. */
  private String waits() {
    return job.work().areas().stream()
        .flatMap(a -> Reopening.waits(a, job.work()).stream())
        .map(m -> " " + context.say(m))
        .collect(Collectors.joining());
  }

  /** All floors beside each other in one table where they have room, else one after another. */
  private List<Block> dates() {
    Map<String, Map<String, String>> floors = new LinkedHashMap<>();
    for (AreaWorkPlan area : job.work().areas()) {
      Reopening.of(area, job.work()).ifPresent(r -> floors.put(area.name(), rows(area, r)));
    }
    if (floors.size() > 1 && floors.size() <= BESIDE) {
      return List.of(beside(floors));
    }
    List<Block> blocks = new ArrayList<>();
    floors.forEach(
        (name, rows) -> {
          blocks.add(new Heading(name));
          List<List<TableCell>> cells = new ArrayList<>();
          rows.forEach(
              (what, when) -> cells.add(List.of(TableCell.of(what), TableCell.bold(when))));
          blocks.add(TableBlock.of(List.of(TableColumn.words(""), TableColumn.words("")), cells));
        });
    return blocks;
  }

  private static Block beside(Map<String, Map<String, String>> floors) {
    Set<String> all = new LinkedHashSet<>();
    floors.values().forEach(rows -> all.addAll(rows.keySet()));
    List<TableColumn> columns = new ArrayList<>(List.of(TableColumn.words("")));
    floors.keySet().forEach(name -> columns.add(TableColumn.narrow(name)));
    List<List<TableCell>> cells = new ArrayList<>();
    for (String what : all) {
      List<TableCell> row = new ArrayList<>(List.of(TableCell.of(what)));
      floors.values().forEach(rows -> row.add(TableCell.bold(rows.getOrDefault(what, "–"))));
      cells.add(row);
    }
    return TableBlock.of(columns, cells);
  }

  /** What happens to a floor, and when. */
  private Map<String, String> rows(AreaWorkPlan area, Reopening reopening) {
    Map<String, String> rows = new LinkedHashMap<>();
    Reopening.shutFrom(area, job.work())
        .ifPresent(
            from ->
                rows.put(
                    context.say("sheets.dates-page.shut-from"),
                    context.times().moment(from, job.work().dated())));
    reopening
        .paper(job.work())
        .sections()
        .get(0)
        .rows()
        .forEach(r -> rows.put(context.say(r.label()), context.say(r.value())));
    return rows;
  }

  /** What is the same for several floors stands once. */
  private List<Block> care() {
    Map<List<Message>, List<String>> floors = new LinkedHashMap<>();
    for (AreaWorkPlan area : job.work().areas()) {
      Reopening.of(area, job.work())
          .ifPresent(
              r -> floors.computeIfAbsent(r.care(), c -> new ArrayList<>()).add(area.name()));
    }
    List<List<Block>> all = new ArrayList<>();
    floors.forEach(
        (care, names) ->
            all.add(
                List.of(
                    new Heading(context.say("sheets.dates-page.care", String.join(", ", names))),
                    new BulletBlock(care.stream().map(context::say).toList()))));
    return all.size() == 2
        ? List.of(new PairBlock(share(floors.keySet()), all.get(0), all.get(1)))
        : all.stream().flatMap(List::stream).toList();
  }

  /** The longer of two lists gets the more width, within reason. */
  private double share(Set<List<Message>> care) {
    List<Integer> lengths =
        care.stream().map(c -> c.stream().mapToInt(m -> context.say(m).length()).sum()).toList();
    double first = lengths.get(0) / (double) (lengths.get(0) + lengths.get(1));
    return Math.max(0.4, Math.min(0.6, first));
  }
}
