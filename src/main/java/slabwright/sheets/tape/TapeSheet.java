package slabwright.sheets.tape;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.TextStyle;
import slabwright.figures.AreaInks;
import slabwright.figures.MarkStyles;
import slabwright.figures.TapeInks;
import slabwright.shape.Affine;
import slabwright.shape.Arcs;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.CautionBlock;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.PageFrame;
import slabwright.sheets.page.Paginator;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.PrintedPage;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.SheetOptions;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.sheets.page.TitleStripText;
import slabwright.sheets.plan.PlanComposer;
import slabwright.sheets.plan.PlanLabel;
import slabwright.sheets.plan.PlanSheet;
import slabwright.tape.AdjustedRoom;
import slabwright.tape.CornerName;
import slabwright.tape.Reading;
import slabwright.tape.ReadingReport;
import slabwright.tape.RoomResult;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/**
 * A taped room on a page of its own: the shape with error ellipses and residuals, every reading in
 * a table, and what to measure again; for a room that is still free, its sketch and the diagonals
 * to tape.
 */
public final class TapeSheet {
  private static final Pen NEXT = Pen.of(0.8, Palette.RED).dashed(3, 1.4);

  private final SheetContext context;
  private final String name;

  private TapeSheet(String name, UnitSystem units, SheetOptions options) {
    this.name = name;
    this.context = new SheetContext(PageFrame.of(options.paper()), units, options.words());
  }

  /**
   * The pages of a room; none for one that was refused.
   *
   * @param name of the room, for the title block
   */
  public static List<PrintedPage> of(
      RoomResult result, String name, UnitSystem units, SheetOptions options) {
    TapeSheet sheet = new TapeSheet(name, units, options);
    List<PageDraft> drafts = new ArrayList<>();
    if (result instanceof RoomResult.Adjusted a) {
      drafts.addAll(sheet.adjusted(a.room()));
    } else if (result instanceof RoomResult.NeedsMore m) {
      drafts.addAll(sheet.free(m));
    }
    return Paginator.paginate(
        drafts,
        sheet.context,
        new TitleStripText(
            name, sheet.context.say("sheets.tape-sheet.as-taped"), 0, options.date()));
  }

  private List<PageDraft> adjusted(AdjustedRoom room) {
    List<Vec> corners = room.corners().stream().map(AdjustedRoom.Corner::at).toList();
    TapeInks inks = new TapeInks(room, Affine.IDENTITY);
    return sheet(
            context.say("sheets.tape-sheet.subtitle", context.area(room.area())),
            Bounds.of(corners))
        .drafts(s -> draw(s, inks, room, corners), blocks(room, inks));
  }

  private PlanSheet sheet(String subtitle, Bounds bounds) {
    return new PlanSheet(
        context,
        context.say("sheets.tape-sheet.title"),
        subtitle,
        name,
        CoordinateFrame.SITE,
        bounds);
  }

  private void draw(PlanComposer sketch, TapeInks inks, AdjustedRoom room, List<Vec> corners) {
    sketch.addInks(walls(room, corners));
    sketch.addInks(inks.inks());
    sketch.keepOff(List.of(new Ring(corners)));
    inks.across().forEach(l -> sketch.keepOff(l.points().get(0), l.points().get(1)));
    double k = context.type().k();
    TextStyle plain = TextStyle.plain(2.5 * k);
    for (TapeInks.TapeLabel w : inks.labels(context.units())) {
      TextStyle style = w.corner() ? TextStyle.bold(3.4 * k) : plain;
      style = w.doubted() ? style.in(Palette.RED) : style;
      Vec p = sketch.view().onPaper(w.at());
      Vec in = sketch.view().onPaper(w.at().plus(w.inwards())).minus(p).unit();
      List<Vec> wishes = List.of(p.plus(in.times(4 * k)), p.plus(in.times(7 * k)));
      sketch.placeLabel(PlanLabel.of(w.at(), w.words(), style).wishing(wishes).nearBy(8));
    }
  }

  private static List<Ink> walls(AdjustedRoom room, List<Vec> corners) {
    List<Vec> points = new ArrayList<>();
    for (int i = 0; i < corners.size(); i++) {
      Vec next = corners.get((i + 1) % corners.size());
      points.addAll(Arcs.arc(corners.get(i), next, room.rises().get(i), AreaInks.TOLERANCE));
    }
    return List.of(Stroke.rings(MarkStyles.WALL, List.of(new Ring(points))));
  }

  private List<Block> blocks(AdjustedRoom room, TapeInks inks) {
    List<Block> blocks = new ArrayList<>();
    room.advice()
        .forEach(
            a ->
                blocks.add(
                    new CautionBlock(
                        context.say("sheets.tape-sheet.look-at-this"),
                        context.words().say(a.sentence()))));
    blocks.add(new Paragraph(inks.about(context.words())));
    blocks.add(new Heading(context.say("sheets.tape-sheet.readings")));
    List<List<TableCell>> rows = new ArrayList<>();
    for (ReadingReport r : room.readings()) {
      boolean out = r.use() == ReadingReport.Use.LEFT_OUT;
      rows.add(
          List.of(
              TableCell.of(
                  out
                      ? context.say("sheets.tape-sheet.left-out", r.name())
                      : context.words().say(r.name())),
              TableCell.of(value(r, r.read())),
              TableCell.of(r.shownResidual(context.units())),
              TableCell.of(Math.round(100 * r.redundancy()) + " %"),
              TableCell.of(QuantityFormat.number(Math.abs(r.statistic()), 1))));
    }
    blocks.add(
        TableBlock.of(
            List.of(
                TableColumn.words(context.say("sheets.tape-sheet.reading")),
                TableColumn.number(context.say("sheets.tape-sheet.read")),
                TableColumn.number(context.say("sheets.tape-sheet.residual")),
                TableColumn.number(context.say("sheets.tape-sheet.checked")),
                TableColumn.number(context.say("sheets.tape-sheet.stands-out"))),
            rows));
    blocks.add(new Paragraph(context.say("sheets.tape-sheet.suspect")));
    return blocks;
  }

  private String value(ReadingReport r, double v) {
    return r.turn() ? QuantityFormat.number(v, 2) + "°" : context.length(v);
  }

  private List<PageDraft> free(RoomResult.NeedsMore more) {
    List<Vec> path = more.sketch().path();
    return sheet(context.say("sheets.tape-sheet.free"), Bounds.of(path))
        .drafts(
            s -> sketch(s, path, more.diagonals()),
            List.of(
                new CautionBlock(
                    context.say("sheets.tape-sheet.measure-next"),
                    context.words().say(more.sentence()))));
  }

  private void sketch(PlanComposer s, List<Vec> path, List<Reading.Diagonal> next) {
    s.addInks(List.of(Stroke.lines(MarkStyles.WALL, List.of(new Line(path)))));
    double k = context.type().k();
    for (Reading.Diagonal d : next) {
      Vec from = path.get(d.from());
      Vec to = path.get(d.to());
      s.addInks(List.of(Stroke.lines(NEXT, List.of(Line.of(from, to)))));
      String words = context.say("sheets.tape-sheet.about", context.length(d.length().mm()));
      TextStyle style = TextStyle.bold(2.8 * k).in(Palette.RED);
      s.placeLabel(PlanLabel.of(from.towards(to, 0.5), words, style).nearBy(6).on(Palette.WHITE));
    }
    for (int i = 0; i + 1 < path.size(); i++) {
      s.keepOff(path.get(i), path.get(i + 1));
    }
    for (int i = 0; i + 1 < path.size(); i++) {
      String corner = CornerName.of(i);
      s.placeLabel(PlanLabel.of(path.get(i), corner, TextStyle.bold(3.4 * k)).nearBy(8));
    }
  }
}
