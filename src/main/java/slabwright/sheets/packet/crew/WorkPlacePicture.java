package slabwright.sheets.packet.crew;

import java.util.ArrayList;
import java.util.List;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.Drawing;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.drawing.Text;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.drawing.View;
import slabwright.drawing.label.Label;
import slabwright.drawing.label.LabelPlacer;
import slabwright.figures.AreaInks;
import slabwright.figures.MarkStyles;
import slabwright.figures.StencilInks;
import slabwright.floor.FloorTakeoff;
import slabwright.floor.Obstacle;
import slabwright.inlay.PlacedInlay;
import slabwright.shape.Affine;
import slabwright.shape.Bounds;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Ring;
import slabwright.shape.Vec;
import slabwright.sheets.page.SheetContext;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.OutlineShape;
import slabwright.units.LetterNumbering;
import slabwright.work.AreaResult;
import slabwright.work.step.StepPlace;

/**
 * A small plan of a floor area with the places of a day's work ringed in blue: not to scale with
 * anything, only to find them.
 */
final class WorkPlacePicture {
  private static final Pen HERE = Pen.of(0.7, Palette.BLUE).dashed(2.5, 1.5);
  private static final double AROUND = 250;

  private final AreaResult area;
  private final List<StepPlace> places;
  private final boolean worked;
  private final SheetContext context;

  /**
   * @param worked whether anything is done; else it shows the floor alone, with its name
   */
  WorkPlacePicture(AreaResult area, List<StepPlace> places, boolean worked, SheetContext context) {
    this.area = area;
    this.places = places;
    this.worked = worked;
    this.context = context;
  }

  /** The plan with its words in the box, mm of paper. */
  List<Ink> in(Bounds box) {
    FloorTakeoff takeoff = area.takeoff();
    Bounds floor = takeoff.gross().bounds();
    double margin = 6.5;
    double denominator =
        Math.max(
            floor.width() / (box.width() - 2 * margin),
            floor.height() / (box.height() - 2 * margin));
    View view = View.centred(denominator, floor, box);
    List<Ink> inks = new ArrayList<>();
    for (Obstacle s : takeoff.standing()) {
      inks.addAll(MarkStyles.of(s.mark().kind().type()).on(s.region()));
    }
    for (PlacedInlay i : area.inlays()) {
      Affine toSite = i.plan().toSite().orElse(Affine.IDENTITY);
      inks.addAll(
          new View(toSite)
              .place(Drawing.of(CoordinateFrame.GRAPHIC, StencilInks.flat(i.plan())))
              .inks());
    }
    inks.addAll(AreaInks.outline(takeoff.area()));
    List<Ring> here = here();
    inks.add(Stroke.rings(HERE, here));
    List<Ink> placed = new ArrayList<>(inks.stream().map(i -> i.placed(view)).toList());
    placed.addAll(words(view, box, here));
    return placed;
  }

  /** What the day's steps work on; nothing where it is the whole floor. */
  private List<Ring> here() {
    List<Ring> rings = new ArrayList<>();
    for (StepPlace p : places) {
      Bounds b = bounds(p);
      if (!b.isEmpty()) {
        Bounds g = b.grown(AROUND);
        rings.add(Ring.rectangle(g.minX(), g.minY(), g.maxX(), g.maxY()));
      }
    }
    return rings;
  }

  private Bounds bounds(StepPlace p) {
    if (p instanceof StepPlace.Inlay i) {
      return area.inlays().stream()
          .filter(x -> x.inlay().id().equals(i.id()))
          .findFirst()
          .map(x -> blank(x).bounds())
          .orElse(Bounds.EMPTY);
    } else if (p instanceof StepPlace.Zone z) {
      return mark(z.markId());
    } else if (p instanceof StepPlace.TopOrStep t) {
      return mark(t.markId());
    }
    return Bounds.EMPTY;
  }

  /** The blank of a graphic on the floor; the graphic's own place where none is set. */
  private static Ring blank(PlacedInlay i) {
    return StencilInks.ring(i.plan().stencils().blank())
        .map(i.plan().toSite().orElse(Affine.IDENTITY));
  }

  private Bounds mark(String id) {
    return area.takeoff()
        .area()
        .mark(id)
        .map(m -> m.form().region(AreaInks.TOLERANCE))
        .map(r -> r.intersect(area.takeoff().gross()))
        .map(Region::bounds)
        .orElse(Bounds.EMPTY);
  }

  private List<Ink> words(View view, Bounds box, List<Ring> here) {
    FloorArea floor = area.takeoff().area();
    OutlineShape shape = OutlineShape.of(floor.outline(), AreaInks.TOLERANCE);
    LabelPlacer labels = new LabelPlacer(box, 0.5);
    labels.avoid(shape.ring().map(view.map()));
    for (Obstacle s : area.takeoff().standing()) {
      s.region().rings().forEach(r -> labels.avoid(r.map(view.map())));
    }
    here.forEach(r -> labels.avoid(r.map(view.map())));
    area.inlays().forEach(i -> labels.avoid(blank(i).map(view.map()).bounds()));
    List<Ink> inks = new ArrayList<>();
    TextStyle blue = context.type().label().in(Palette.BLUE);
    String work =
        !worked
            ? floor.name()
            : here.isEmpty()
                ? context.say("sheets.crew-day.whole-floor")
                : context.say("sheets.crew-day.work-here");
    Vec about =
        here.isEmpty()
            ? area.takeoff().net().labelPoint()
            : new Vec(here.get(0).bounds().maxX(), here.get(0).bounds().middle().y());
    put(labels, inks, view, about, work, blue);
    if (!here.isEmpty() && places.contains(StepPlace.WHOLE_FLOOR)) {
      Vec middle = area.takeoff().net().labelPoint();
      String too = context.say("sheets.crew-day.whole-floor-too");
      put(labels, inks, view, middle, too, blue);
    }
    for (Doorway d : floor.doorways()) {
      Line opening = shape.doorway(d);
      Vec middle = opening.points().get(0).towards(opening.points().get(1), 0.5);
      put(labels, inks, view, middle, d.name(), context.type().small());
    }
    for (int i = 0; i < shape.pieces().size(); i++) {
      List<Vec> p = shape.pieces().get(i).points();
      Vec middle = p.get((p.size() - 1) / 2).towards(p.get((p.size() - 1) / 2 + 1), 0.5);
      put(labels, inks, view, middle, LetterNumbering.of(i), context.type().label());
    }
    return inks;
  }

  private static void put(
      LabelPlacer labels, List<Ink> inks, View view, Vec about, String words, TextStyle style) {
    labels
        .place(Label.of(view.onPaper(about), words, style, 30).nearBy(8))
        .ifPresent(
            p -> {
              double up = (TextMeasure.CAP_HEIGHT - TextMeasure.DESCENT) * style.size() / 2;
              inks.add(Text.middle(p.middle().plus(new Vec(0, up)), words, style));
            });
  }
}
