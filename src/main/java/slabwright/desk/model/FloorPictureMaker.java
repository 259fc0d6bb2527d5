package slabwright.desk.model;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import slabwright.drawing.Drawing;
import slabwright.drawing.Fill;
import slabwright.drawing.Frame;
import slabwright.drawing.Ink;
import slabwright.drawing.Palette;
import slabwright.shape.Region;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.OutlineShape;

/**
 * Works out the picture of a floor area. Shapes of marks that did not change are kept from one
 * picture to the next. Used by one thread at a time.
 */
public final class FloorPictureMaker implements Function<FloorArea, FloorPicture> {
  /** How far arcs on the screen may stray, mm. */
  public static final double TOLERANCE = 1;

  private Map<Form, Region> known = new HashMap<>();

  @Override
  public FloorPicture apply(FloorArea area) {
    OutlineShape shape = OutlineShape.of(area.outline(), TOLERANCE);
    Region floor = shape.region();
    List<Thing> things = new ArrayList<>();
    List<Ink> inks = new ArrayList<>();
    List<Ink> names = new ArrayList<>();
    inks.add(Fill.of(Palette.WHITE, floor));
    Map<Form, Region> next = new HashMap<>();
    for (Mark m : area.marks()) {
      Region region = known.computeIfAbsent(m.form(), f -> f.region(TOLERANCE));
      next.put(m.form(), region);
      Thing thing = MarkInks.thing(m, region);
      things.add(thing);
      inks.addAll(MarkInks.of(m, thing));
      names.addAll(MarkInks.name(m, thing));
    }
    known = next;
    inks.addAll(OutlineInks.of(area, shape));
    area.doorways().forEach(d -> things.add(OutlineInks.thing(d, shape)));
    inks.addAll(names);
    return new FloorPicture(area, shape, floor, things, Drawing.of(Frame.SITE, inks));
  }
}
