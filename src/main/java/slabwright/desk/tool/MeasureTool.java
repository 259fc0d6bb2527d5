package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.drawing.Ink;
import slabwright.shape.Vec;
import slabwright.units.LengthFormat;
import slabwright.units.Message;

/** Measures between two points; changes nothing. */
public final class MeasureTool implements Tool {
  private final DeskContext bench;
  private Optional<Vec> from = Optional.empty();
  private Optional<Vec> to = Optional.empty();
  private Vec tip = Vec.ZERO;

  public MeasureTool(DeskContext bench) {
    this.bench = bench;
  }

  @Override
  public Message prompt() {
    return from.isEmpty() || to.isPresent()
        ? Message.of("desk.tool.measure.from")
        : Message.of("desk.tool.measure.to");
  }

  @Override
  public Optional<Message> standing() {
    if (from.isEmpty()) {
      return Optional.empty();
    }
    Vec d = to.orElse(tip).minus(from.get());
    return Optional.of(
        Message.of(
            "desk.tool.measure.distances",
            length(d.length()),
            length(Math.abs(d.x())),
            length(Math.abs(d.y()))));
  }

  private String length(double mm) {
    return LengthFormat.show(mm, bench.desk().shown().units());
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
    from = to.isPresent() ? from : Optional.empty();
    to = Optional.empty();
    return had;
  }

  @Override
  public Optional<Vec> from() {
    return to.isPresent() ? Optional.empty() : from;
  }

  @Override
  public List<Ink> over(OverlayScale paper) {
    List<Ink> inks = new ArrayList<>();
    if (from.isPresent()) {
      Vec b = to.orElse(tip);
      inks.add(OverlayInks.line(List.of(from.get(), b)));
      inks.addAll(OverlayInks.handle(from.get(), paper));
      inks.addAll(OverlayInks.handle(b, paper));
      inks.addAll(OverlayInks.leg(from.get(), b, paper));
    }
    return inks;
  }
}
