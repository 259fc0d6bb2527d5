package slabwright.sheets.packet.client;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.plan.LabelCandidates;
import slabwright.sheets.plan.OverviewBlock;
import slabwright.sheets.plan.PlanComposer;
import slabwright.sheets.plan.PlanLabel;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.MarkType;
import slabwright.site.OutlineShape;
import slabwright.units.Message;
import slabwright.work.AreaResult;

/** Floors as a client looks at them: what stands there, doors, the graphics; no dimension. */
final class ClientPlan {
  private static final Set<MarkType> NAMED =
      EnumSet.of(MarkType.TRENCH, MarkType.PATCH, MarkType.RESIDUE);

  private static final Set<MarkType> LINES =
      EnumSet.of(MarkType.CRACK, MarkType.SPALL, MarkType.JOINT);
  private static final int MOST_NAMED = 4;
  private static final double PLACE_MARGIN = 5;

  private final SheetContext context;

  ClientPlan(SheetContext context) {
    this.context = context;
  }

  /**
   * One floor with the names of what stays visible.
   *
   * @param picture how it should look; empty draws it in lines
   */
  OverviewBlock floor(AreaResult area, Optional<ExpectedFloor> picture, double height) {
    return new OverviewBlock(
        area.takeoff().gross().bounds(),
        height,
        8,
        s -> {
          picture.ifPresentOrElse(
              p -> s.addInks(List.of(p.fromAbove(s.view().scale()))), () -> floor(s, area));
          keepOff(s, area);
          names(s, area);
        });
  }

  /** One floor, small: where the graphic lies from the doors. */
  OverviewBlock place(AreaResult area, double height) {
    return new OverviewBlock(
        area.takeoff().gross().bounds(),
        height,
        PLACE_MARGIN,
        s -> {
          floor(s, area);
          keepOff(s, area);
          doors(s, area.takeoff().area());
        });
  }

  private static void floor(PlanComposer sketch, AreaResult a) {
    sketch.addInks(FillStyle.plain(Palette.FIELD, Palette.FIELD).on(a.takeoff().gross()));
    for (Zone z : a.takeoff().zones()) {
      z.mark()
          .ifPresent(
              m -> sketch.addInks(FillStyle.plain(Palette.WHITE, Palette.RULE).on(z.region())));
    }
    for (Obstacle o : a.takeoff().standing()) {
      sketch.addInks(FillStyle.plain(Palette.GREY, Palette.SOFT).on(o.region()));
    }
    for (PlacedInlay i : a.inlays()) {
      Affine to = i.plan().toSite().orElse(Affine.IDENTITY);
      List<Ink> flat = StencilInks.flat(i.plan());
      sketch.addInks(new View(to).place(Drawing.of(CoordinateFrame.GRAPHIC, flat)).inks());
    }
  }

  private static void keepOff(PlanComposer sketch, AreaResult a) {
    a.takeoff().standing().forEach(o -> sketch.keepOff(o.region().rings()));
    for (PlacedInlay i : a.inlays()) {
      Affine to = i.plan().toSite().orElse(Affine.IDENTITY);
      sketch.keepOffWhole(StencilInks.ring(i.plan().openings().bounds()).map(to));
    }
    sketch.addInks(AreaInks.outline(a.takeoff().area()));
    sketch.keepOff(
        List.of(OutlineShape.of(a.takeoff().area().outline(), AreaInks.TOLERANCE).ring()));
  }

  private void names(PlanComposer sketch, AreaResult a) {
    doors(sketch, a.takeoff().area());
    TextStyle plain = context.type().small().in(Palette.INK);
    for (PlacedInlay i : a.inlays()) {
      Affine to = i.plan().toSite().orElse(Affine.IDENTITY);
      Bounds painted = StencilInks.ring(i.plan().openings().bounds()).map(to).bounds();
      label(sketch, painted, i.inlay().name(), context.type().label());
    }
    for (Obstacle o : a.takeoff().standing()) {
      if (o.mark().kind().type() == MarkType.ISLAND && named(a, MarkType.ISLAND)) {
        label(sketch, o.region().bounds(), o.mark().name(), plain);
      }
    }
    for (Zone z : a.takeoff().zones()) {
      z.mark()
          .filter(m -> NAMED.contains(m.kind().type()) && named(a, m.kind().type()))
          .ifPresent(m -> label(sketch, z.region().bounds(), m.name(), plain));
    }
  }

  /** A few of a kind have names on the plan; a crowd is told by its number beside it. */
  private static boolean named(AreaResult a, MarkType type) {
    return a.takeoff().area().marks().stream().filter(m -> m.kind().type() == type).count()
        <= MOST_NAMED;
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
        sketch.placeLabel(
            PlanLabel.of(middle, d.name(), style)
                .wishing(List.of(wish))
                .nearBy(8)
                .on(Palette.WHITE));
      }
    }
  }

  /** Under or over what it names, so that this is seen; else upon it. */
  private static void label(PlanComposer sketch, Bounds of, String words, TextStyle style) {
    double high = of.height() * sketch.view().scale() / 2 + style.size() / 2 + 1.6;
    Vec middle = sketch.view().onPaper(of.middle());
    sketch.placeLabel(
        PlanLabel.of(of.middle(), words, style)
            .wishing(List.of(middle.plus(new Vec(0, high)), middle.plus(new Vec(0, -high)), middle))
            .nearBy(high + 2)
            .on(Palette.WHITE));
  }

  /** What to expect of a place of the floor; many of a kind in one sentence with their number. */
  List<String> expectations(List<AreaResult> areas) {
    List<Mark> marks =
        areas.stream().flatMap(a -> a.takeoff().area().marks().stream()).distinct().toList();
    List<String> said = new ArrayList<>();
    for (MarkType type : NAMED) {
      List<Mark> of = marks.stream().filter(m -> m.kind().type() == type).toList();
      if (of.size() > MOST_NAMED) {
        said.add(context.say(many(type, of.size())));
      } else {
        of.forEach(m -> add(said, context.say(one(type, line(m.name())))));
      }
    }
    if (marks.stream().anyMatch(m -> LINES.contains(m.kind().type()))) {
      said.add(context.say("sheets.client-plan.cracks"));
    }
    return said;
  }

  private static Message one(MarkType type, String name) {
    return type == MarkType.TRENCH
        ? Message.of("sheets.client-plan.trench", name)
        : type == MarkType.PATCH
            ? Message.of("sheets.client-plan.patch", name)
            : Message.of("sheets.client-plan.residue", name);
  }

  private static Message many(MarkType type, int count) {
    return type == MarkType.TRENCH
        ? Message.of("sheets.client-plan.trenches", count)
        : type == MarkType.PATCH
            ? Message.of("sheets.client-plan.patches", count)
            : Message.of("sheets.client-plan.residues", count);
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
