package slabwright.desk.tool;

import java.util.List;
import java.util.Optional;
import slabwright.drawing.Ink;
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.Spot;

/** A single place, set with one click. */
final class PointShaper implements Shaper {
  private Optional<Vec> tip = Optional.empty();

  @Override
  public String prompt() {
    return "Click where it is.";
  }

  @Override
  public List<Form> press(Touch t) {
    return List.of(new Form.Place(Spot.of(t.at())));
  }

  @Override
  public void hover(Touch t) {
    tip = Optional.of(t.at());
  }

  @Override
  public Optional<String> entry() {
    return Optional.empty();
  }

  @Override
  public Typed type(String line) {
    return Typed.refused("Click where it is.");
  }

  @Override
  public boolean stepBack() {
    return false;
  }

  @Override
  public boolean clear() {
    tip = Optional.empty();
    return false;
  }

  @Override
  public List<Ink> over(Paper paper) {
    return tip.<List<Ink>>map(v -> List.of(Overlays.dot(v, 2, Overlays.LIVE))).orElse(List.of());
  }
}
