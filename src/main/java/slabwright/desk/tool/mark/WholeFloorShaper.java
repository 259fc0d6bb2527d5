package slabwright.desk.tool.mark;

import java.util.List;
import slabwright.desk.tool.OverlayScale;
import slabwright.desk.tool.PlanLookup;
import slabwright.desk.tool.Touch;
import slabwright.drawing.Ink;
import slabwright.site.FloorArea;
import slabwright.site.Form;
import slabwright.units.Message;

/** The whole floor from wall to wall, with one click. */
final class WholeFloorShaper implements Shaper {
  private final PlanLookup shown;

  WholeFloorShaper(PlanLookup shown) {
    this.shown = shown;
  }

  @Override
  public Message prompt() {
    return Message.of("desk.tool.mark.covers-the-floor");
  }

  @Override
  public List<Form> press(Touch t) {
    return shown.picture().<List<Form>>map(p -> List.of(whole(p.area()))).orElse(List.of());
  }

  private static Form whole(FloorArea area) {
    return new Form.Curved(
        area.outline().stream().map(p -> new Form.CurvedCorner(p.from(), p.rise())).toList());
  }

  @Override
  public Typed type(String line) {
    return Typed.refused(Message.of("desk.tool.mark.click-on-the-floor"));
  }

  @Override
  public boolean stepBack() {
    return false;
  }

  @Override
  public boolean clear() {
    return false;
  }

  @Override
  public List<Ink> over(OverlayScale paper) {
    return List.of();
  }
}
