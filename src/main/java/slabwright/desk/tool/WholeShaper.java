package slabwright.desk.tool;

import java.util.List;
import slabwright.drawing.Ink;
import slabwright.site.FloorArea;
import slabwright.site.Form;

/** The whole floor from wall to wall, with one click. */
final class WholeShaper implements Shaper {
  private final Shown shown;

  WholeShaper(Shown shown) {
    this.shown = shown;
  }

  @Override
  public String prompt() {
    return "Click anywhere: it covers the floor from wall to wall.";
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
    return Typed.refused("Click on the floor.");
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
  public List<Ink> over(Paper paper) {
    return List.of();
  }
}
