package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.drawing.Ink;
import slabwright.shape.Vec;

/** Measures between two points; changes nothing. */
public final class MeasureTool implements Tool {
  private Optional<Vec> from = Optional.empty();
  private Optional<Vec> to = Optional.empty();
  private Vec tip = Vec.ZERO;

  @Override
  public String prompt() {
    return from.isEmpty() || to.isPresent()
        ? "Click where to measure from."
        : "Click where to measure to.";
  }

  @Override
  public void press(Touch t) {
    tip = t.at();
    if (from.isEmpty() || to.isPresent()) {
      from = Optional.of(t.at());
      to = Optional.empty();
    } else {
      to = Optional.of(t.at());
    }
  }

  @Override
  public void hover(Touch t) {
    tip = t.at();
  }

  @Override
  public void drag(Touch t) {
    tip = t.at();
  }

  @Override
  public void release(Touch t) {
    if (from.isPresent() && to.isEmpty() && from.get().distanceTo(t.at()) > 2 * t.reach()) {
      to = Optional.of(t.at());
    }
  }

  @Override
  public boolean escape() {
    boolean had = from.isPresent();
    from = Optional.empty();
    to = Optional.empty();
    return had;
  }

  @Override
  public Optional<Vec> from() {
    return to.isPresent() ? Optional.empty() : from;
  }

  @Override
  public List<Ink> over(Paper paper) {
    List<Ink> inks = new ArrayList<>();
    if (from.isPresent()) {
      Vec b = to.orElse(tip);
      inks.add(Overlays.line(List.of(from.get(), b)));
      inks.addAll(Overlays.handle(from.get(), paper));
      inks.addAll(Overlays.handle(b, paper));
      inks.addAll(Overlays.leg(from.get(), b, paper));
    }
    return inks;
  }
}
