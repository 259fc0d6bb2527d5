package slabwright.sheets.prep;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.FillStyle;
import slabwright.drawing.Palette;
import slabwright.figures.AreaInks;
import slabwright.figures.MarkStyles;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Obstacle;
import slabwright.floor.TrenchWork;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.KeyBlock;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.sheets.plan.OutlineLabels;
import slabwright.sheets.plan.PlanComposer;
import slabwright.sheets.plan.PlanLabel;
import slabwright.sheets.plan.PlanSheet;
import slabwright.sheets.plan.Poster;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkType;
import slabwright.site.Spot;
import slabwright.units.QuantityFormat;
import slabwright.work.prep.FillerGap;

/** What of a floor is filled, stripped, leveled or taped off, numbered on the plan and listed. */
public final class FillPoster {
  private static final Set<MarkType> SHOWN =
      Set.of(
          MarkType.RESIDUE,
          MarkType.JOINT,
          MarkType.CRACK,
          MarkType.SPALL,
          MarkType.PATCH,
          MarkType.TRENCH,
          MarkType.MASKED_TRIM);

  /** Pale, so that one sees at a glance what is floor and what on it is worked on. */
  private static final FillStyle FLOOR = FillStyle.plain(Palette.FIELD, Palette.RULE);

  /** More than so many of a kind are told in one row, and none by its name. */
  private static final int MOST = 8;

  private final FloorTakeoff takeoff;
  private final SheetContext context;
  private final Map<MarkType, List<Item>> items = new LinkedHashMap<>();

  /** A mark with the place on the floor that its number stands by, and how large it is there. */
  private record Item(Mark mark, Vec at, String size, double filler) {}

  public FillPoster(FloorTakeoff takeoff, SheetContext context) {
    this.takeoff = takeoff;
    this.context = context;
    for (MarkType type : MarkType.values()) {
      if (SHOWN.contains(type)) {
        List<Item> of =
            takeoff.area().marks().stream()
                .filter(m -> m.kind().type() == type)
                .flatMap(m -> item(m).stream())
                .toList();
        if (!of.isEmpty()) {
          items.put(type, of);
        }
      }
    }
  }

  /** Empty where nothing of that kind is marked on the floor. */
  public Optional<Poster> poster() {
    List<Block> beside = new ArrayList<>();
    beside.add(new Heading(context.say("sheets.fill-poster.list")));
    beside.add(table());
    beside.add(new Heading(context.say("sheets.prep-sheet.key")));
    beside.add(key());
    return items.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new PlanSheet(
                    context,
                    context.say("sheets.fill-poster.title"),
                    context.say("sheets.fill-poster.subtitle"),
                    takeoff.area().name(),
                    CoordinateFrame.SITE,
                    takeoff.gross().bounds())
                .poster(this::draw, List.of(), beside));
  }

  private Optional<Item> item(Mark m) {
    Form form = m.form();
    if (form instanceof Form.Place p) {
      return Optional.of(new Item(m, p.at().vec(), "", 0));
    }
    Optional<FillerGap> gap = FillerGap.of(m, takeoff.net()).filter(g -> g.run() > 0);
    double filler = gap.map(FillerGap::mm3).orElse(0.0);
    if (form instanceof Form.Trace t) {
      List<Line> on = takeoff.gross().clip(new Line(t.path().stream().map(Spot::vec).toList()));
      double run = gap.map(FillerGap::run).orElse(on.stream().mapToDouble(Line::length).sum());
      return on.stream()
          .max((a, b) -> Double.compare(a.length(), b.length()))
          .map(l -> new Item(m, middle(l), context.length(run), filler));
    }
    Region region = form.region(AreaInks.TOLERANCE).intersect(takeoff.gross());
    return region.isEmpty()
        ? Optional.empty()
        : Optional.of(
            new Item(
                m,
                region.labelPoint(),
                form instanceof Form.Strip && gap.isPresent()
                    ? context.length(gap.get().run())
                    : context.area(region.area()),
                filler));
  }

  private static Vec middle(Line l) {
    int longest = 0;
    for (int i = 1; i + 1 < l.points().size(); i++) {
      longest = side(l, i) > side(l, longest) ? i : longest;
    }
    return l.points().get(longest).towards(l.points().get(longest + 1), 0.5);
  }

  private static double side(Line l, int i) {
    return l.points().get(i).distanceTo(l.points().get(i + 1));
  }

  private void draw(PlanComposer sketch) {
    sketch.addInks(FLOOR.on(takeoff.net()));
    items.values().stream()
        .flatMap(List::stream)
        .forEach(i -> sketch.addInks(AreaInks.mark(i.mark(), takeoff.gross())));
    for (Obstacle s : takeoff.standing()) {
      sketch.addInks(MarkStyles.of(s.mark().kind().type()).on(s.region()));
      sketch.keepOff(s.region().rings());
    }
    sketch.addInks(AreaInks.outline(takeoff.area()));
    new OutlineLabels(takeoff.area(), context, sketch).avoidWalls().labelDoorways().labelWalls();
    List<Item> few =
        items.values().stream().filter(of -> !isCrowd(of)).flatMap(List::stream).toList();
    for (int i = 0; i < few.size(); i++) {
      sketch.placeNumber(few.get(i).at(), List.of(), Integer.toString(i + 1));
    }
    few.forEach(
        i ->
            sketch.placeLabel(
                PlanLabel.of(i.at(), i.mark().name(), context.type().label())
                    .nearBy(12)
                    .on(Palette.WHITE)));
  }

  /** Drawn, but neither numbered nor named: a hundred rings would hide what they stand for. */
  private static boolean isCrowd(List<Item> of) {
    return of.size() > MOST;
  }

  private TableBlock table() {
    List<List<TableCell>> rows = new ArrayList<>();
    int n = 0;
    for (Map.Entry<MarkType, List<Item>> e : items.entrySet()) {
      List<Item> of = e.getValue();
      if (isCrowd(of)) {
        double filler = of.stream().mapToDouble(Item::filler).sum();
        rows.add(
            row(
                TableCell.of(""),
                context.say("sheets.quantities-sheet.crowd", e.getKey().label(), of.size()),
                "",
                filler));
      } else {
        for (Item i : of) {
          n++;
          rows.add(row(new TableCell.Ringed(Integer.toString(n)), named(i), i.size(), i.filler()));
        }
      }
    }
    return TableBlock.of(
        List.of(
            TableColumn.narrow(""),
            TableColumn.words(context.say("sheets.prep-sheet.what")),
            TableColumn.number(context.say("sheets.fill-poster.size")),
            TableColumn.number(context.say("sheets.fill-poster.filler"))),
        rows);
  }

  private List<TableCell> row(TableCell number, String what, String size, double filler) {
    return List.of(
        number,
        TableCell.of(what),
        TableCell.of(size),
        TableCell.of(filler > 0 ? QuantityFormat.volume(filler, context.units()) : ""));
  }

  /** A trench with what is due; anything else with its kind. */
  private String named(Item i) {
    String name = i.mark().name();
    return TrenchWork.of(takeoff).stream()
        .filter(t -> t.mark().equals(i.mark()))
        .findFirst()
        .map(t -> context.say("sheets.hand-work-list.trench", name, t.state(), t.due()))
        .orElseGet(
            () ->
                context.say(
                    "sheets.filler-quantities.name-and-kind",
                    name,
                    i.mark().kind().type().label()));
  }

  private KeyBlock key() {
    List<KeyBlock.Entry> entries = new ArrayList<>();
    items.forEach(
        (type, of) -> {
          String kind = context.say(type.label());
          boolean line = of.stream().anyMatch(i -> i.mark().form() instanceof Form.Trace);
          entries.add(
              line
                  ? KeyBlock.line(MarkStyles.pen(type), kind)
                  : KeyBlock.look(MarkStyles.of(type), kind));
        });
    return KeyBlock.of(entries);
  }
}
