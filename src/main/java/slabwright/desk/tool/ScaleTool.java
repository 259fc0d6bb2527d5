package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.model.input.TypedLength;
import slabwright.drawing.Ink;
import slabwright.shape.Affine;
import slabwright.shape.Vec;
import slabwright.site.Underlay;
import slabwright.site.edit.SiteEdit;
import slabwright.units.BareUnit;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;

/** Brings the picture under the drawing to true scale: two points and their true distance. */
public final class ScaleTool implements Tool {
  private final DeskContext bench;
  private final Runnable done;
  private final TypedLength lengths;
  private final List<Vec> points = new ArrayList<>();
  private Vec tip = Vec.ZERO;

  public ScaleTool(DeskContext bench, Runnable done) {
    this.bench = bench;
    lengths = new TypedLength(LengthUse.WALL, () -> bench.desk().site().units());
    this.done = done;
  }

  @Override
  public Message prompt() {
    return switch (points.size()) {
      case 0 -> Message.of("desk.tool.scale.one-end");
      case 1 -> Message.of("desk.tool.scale.other-end");
      default -> Message.of("desk.tool.scale.true-length");
    };
  }

  @Override
  public boolean snaps() {
    return false;
  }

  @Override
  public void hover(Touch t) {
    tip = t.raw();
  }

  @Override
  public void press(Touch t) {
    if (points.size() == 2) {
      points.clear();
    }
    points.add(t.raw());
  }

  @Override
  public Optional<Message> entry() {
    return points.size() == 2
        ? Optional.of(Message.of("desk.tool.scale.length"))
        : Optional.empty();
  }

  @Override
  public Optional<BareUnit> bare() {
    return Optional.of(lengths.bare());
  }

  @Override
  public Optional<String> meaning(String line) {
    return lengths.meaning(line);
  }

  @Override
  public Optional<Message> type(String line) {
    Result<Length> read = lengths.read(line);
    if (read instanceof Result.Refused<Length> refused) {
      return Optional.of(refused.message());
    }
    Optional<Underlay> under = bench.desk().site().underlay();
    double now = points.get(0).distanceTo(points.get(1));
    if (under.isEmpty() || now < 1 || !(read.orThrow().mm() > 0)) {
      return Optional.of(Message.of("desk.tool.scale.two-points"));
    }
    Vec p = points.get(0);
    double k = read.orThrow().mm() / now;
    Affine placing =
        under
            .get()
            .placing()
            .then(Affine.move(-p.x(), -p.y()))
            .then(Affine.scale(k, k))
            .then(Affine.move(p.x(), p.y()));
    bench.desk().push(new SiteEdit.SetUnderlay(Optional.of(under.get().withPlacing(placing))));
    points.clear();
    done.run();
    return Optional.empty();
  }

  @Override
  public boolean stepBack() {
    if (points.isEmpty()) {
      return false;
    }
    points.remove(points.size() - 1);
    return true;
  }

  @Override
  public List<Ink> over(OverlayScale paper) {
    List<Ink> inks = new ArrayList<>();
    if (!points.isEmpty()) {
      Vec b = points.size() == 2 ? points.get(1) : tip;
      inks.add(OverlayInks.line(List.of(points.get(0), b)));
      inks.addAll(OverlayInks.handle(points.get(0), paper));
      inks.addAll(OverlayInks.handle(b, paper));
    }
    return inks;
  }
}
