package slabwright.sheets.packet.client;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import slabwright.drawing.CoordinateFrame;
import slabwright.drawing.Drawing;
import slabwright.drawing.FillStyle;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.drawing.TextMeasure;
import slabwright.drawing.TextStyle;
import slabwright.drawing.View;
import slabwright.figures.AreaInks;
import slabwright.figures.StencilInks;
import slabwright.floor.Obstacle;
import slabwright.floor.Zone;
import slabwright.inlay.PlacedInlay;
import slabwright.shape.Affine;
import slabwright.shape.Vec;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.plan.LabelCandidates;
import slabwright.sheets.plan.OverviewBlock;
import slabwright.sheets.plan.PlanComposer;
import slabwright.sheets.plan.PlanLabel;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.MarkType;
import slabwright.site.OutlineShape;
import slabwright.work.AreaResult;

/** Floors as a client looks at them: what stands there, doors, the graphics; no dimension. */
final class ClientPlan {
  private static final Set<MarkType> NAMED =
      EnumSet.of(MarkType.TRENCH, MarkType.PATCH, MarkType.RESIDUE);

  private final SheetContext context;

  ClientPlan(SheetContext context) {
    this.context = context;
  }

  /** One floor with the names of what will stay visible. */
  OverviewBlock floor(AreaResult area, double height) {
    return new OverviewBlock(
        area.takeoff().gross().bounds(),
        height,
        8,
        s -> {
          floor(s, area);
          names(s, area);
        });
  }

  /** One floor, small: where the graphic lies from the doors. */
  OverviewBlock place(AreaResult area, double height) {
    return new OverviewBlock(
        area.takeoff().gross().bounds(),
        height,
        5,
        s -> {
          floor(s, area);
          doors(s, area.takeoff().area());
        });
  }

  private void floor(PlanComposer sketch, AreaResult a) {
    sketch.addInks(FillStyle.plain(Palette.FIELD, Palette.FIELD).on(a.takeoff().gross()));
    for (Zone z : a.takeoff().zones()) {
      z.mark()
          .ifPresent(
              m -> sketch.addInks(FillStyle.plain(Palette.WHITE, Palette.RULE).on(z.region())));
    }
    for (Obstacle o : a.takeoff().standing()) {
      sketch.addInks(FillStyle.plain(Palette.GREY, Palette.SOFT).on(o.region()));
      sketch.keepOff(o.region().rings());
    }
    for (PlacedInlay i : a.inlays()) {
      Affine to = i.plan().toSite().orElse(Affine.IDENTITY);
      List<Ink> flat = StencilInks.flat(i.plan());
      sketch.addInks(new View(to).place(Drawing.of(CoordinateFrame.GRAPHIC, flat)).inks());
      sketch.keepOffWhole(StencilInks.ring(i.plan().openings().bounds()).map(to));
    }
    sketch.addInks(AreaInks.outline(a.takeoff().area()));
    sketch.keepOff(
        List.of(OutlineShape.of(a.takeoff().area().outline(), AreaInks.TOLERANCE).ring()));
  }

  private void names(PlanComposer sketch, AreaResult a) {
    doors(sketch, a.takeoff().area());
    TextStyle plain = context.type().small();
    for (PlacedInlay i : a.inlays()) {
      label(sketch, i.inlay().middle().vec(), i.inlay().name(), context.type().label());
    }
    for (Zone z : a.takeoff().zones()) {
      z.mark()
          .filter(m -> NAMED.contains(m.kind().type()))
          .ifPresent(m -> label(sketch, z.region().labelPoint(), m.name(), plain));
    }
    for (Obstacle o : a.takeoff().standing()) {
      if (o.mark().kind().type() == MarkType.ISLAND) {
        label(sketch, o.region().labelPoint(), o.mark().name(), plain);
      }
    }
  }

  private void doors(PlanComposer sketch, FloorArea area) {
    OutlineShape shape = OutlineShape.of(area.outline(), AreaInks.TOLERANCE);
    for (Doorway d : area.doorways()) {
      if (d.passage().leadsTo().isEmpty()) {
        List<Vec> ends = LabelCandidates.chord(shape.doorway(d)).points();
        Vec along = ends.get(1).minus(ends.get(0)).unit();
        Vec out = shape.floorOnLeft() ? along.left().times(-1) : along.left();
        TextStyle style = context.type().label();
        double half =
            Math.abs(out.x()) * TextMeasure.width(d.name(), style) / 2
                + Math.abs(out.y()) * style.size() / 2;
        Vec middle = ends.get(0).towards(ends.get(1), 0.5);
        Vec wish = sketch.view().onPaper(middle).plus(new Vec(out.x(), -out.y()).times(half + 2));
        sketch.placeLabel(PlanLabel.of(middle, d.name(), style).wishing(List.of(wish)).nearBy(8));
      }
    }
  }

  private static void label(PlanComposer sketch, Vec about, String words, TextStyle style) {
    sketch.placeLabel(PlanLabel.of(about, words, style).nearBy(6));
  }

  /** What to expect of a place of the floor, once for each kind. */
  List<String> expectations(List<AreaResult> areas) {
    List<String> said = new ArrayList<>();
    areas.stream()
        .flatMap(a -> a.takeoff().area().marks().stream())
        .forEach(
            m -> {
              switch (m.kind().type()) {
                case TRENCH -> add(said, context.say("sheets.client-plan.trench", line(m.name())));
                case PATCH -> add(said, context.say("sheets.client-plan.patch", line(m.name())));
                case RESIDUE ->
                    add(said, context.say("sheets.client-plan.residue", line(m.name())));
                case CRACK, SPALL, JOINT -> add(said, context.say("sheets.client-plan.cracks"));
                default -> {}
              }
            });
    return said;
  }

  private static String line(String name) {
    return name.isEmpty()
        ? name
        : name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
  }

  private static void add(List<String> all, String one) {
    if (!all.contains(one)) {
      all.add(one);
    }
  }
}
