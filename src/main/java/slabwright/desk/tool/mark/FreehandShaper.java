package slabwright.desk.tool.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.tool.OverlayInks;
import slabwright.desk.tool.OverlayScale;
import slabwright.desk.tool.Touch;
import slabwright.drawing.Ink;
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.Spot;
import slabwright.units.Message;

/** An edge drawn with the pointer held down; points closer than the eye sees are left out. */
final class FreehandShaper implements Shaper {
  private final List<Vec> points = new ArrayList<>();
  private Optional<Message> refused = Optional.empty();

  @Override
  public Message prompt() {
    return Message.of("desk.tool.mark.hold-and-draw");
  }

  @Override
  public List<Form> press(Touch t) {
    refused = Optional.empty();
    points.clear();
    points.add(t.raw());
    return List.of();
  }

  @Override
  public void drag(Touch t) {
    if (!points.isEmpty() && points.get(points.size() - 1).distanceTo(t.raw()) > t.reach() * 0.7) {
      points.add(t.raw());
    }
  }

  @Override
  public List<Form> release(Touch t) {
    List<Spot> spots = points.stream().map(Spot::of).toList();
    boolean drawn = !points.isEmpty();
    points.clear();
    Optional<Form> form =
        Optional.of(spots)
            .filter(s -> s.size() > 2)
            .<Form>map(Form.Polygon::new)
            .filter(f -> f.region(1).area() >= t.reach() * t.reach());
    refused =
        drawn && form.isEmpty()
            ? Optional.of(Message.of("desk.tool.mark.goes-round-nothing"))
            : Optional.empty();
    return form.stream().toList();
  }

  @Override
  public Optional<Message> why() {
    return refused;
  }

  @Override
  public Typed type(String line) {
    return Typed.refused(Message.of("desk.tool.mark.draw-round-it"));
  }

  @Override
  public boolean stepBack() {
    return clear();
  }

  @Override
  public boolean clear() {
    boolean had = !points.isEmpty();
    points.clear();
    return had;
  }

  @Override
  public List<Ink> over(OverlayScale paper) {
    return points.size() < 2 ? List.of() : List.of(OverlayInks.line(points));
  }
}
