package slabwright.desk.tool.mark;

import java.util.List;
import java.util.Optional;
import slabwright.desk.model.input.TypedSpot;
import slabwright.desk.tool.OverlayInks;
import slabwright.desk.tool.OverlayScale;
import slabwright.desk.tool.Touch;
import slabwright.drawing.Ink;
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.Spot;

/** A single place, set with one click. */
final class PointShaper implements Shaper {
  private Optional<Vec> tip = Optional.empty();

  @Override
  public String prompt() {
    return "Click where it is, or type its place, right and up from 0.";
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
    return Optional.of("Place");
  }

  @Override
  public String example() {
    return "12', 5' 6\"";
  }

  @Override
  public Typed type(String line) {
    return Typed.of(TypedSpot.read(line), at -> List.of(new Form.Place(at)));
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
  public List<Ink> over(OverlayScale paper) {
    return tip.<List<Ink>>map(v -> List.of(OverlayInks.dot(v, 2, OverlayInks.LIVE)))
        .orElse(List.of());
  }
}
