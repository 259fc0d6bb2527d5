package slabwright.desk.tool.mark;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.model.input.TypedLength;
import slabwright.desk.model.input.TypedSpot;
import slabwright.desk.tool.OverlayInks;
import slabwright.desk.tool.OverlayScale;
import slabwright.desk.tool.PolylineDraft;
import slabwright.desk.tool.Touch;
import slabwright.drawing.Ink;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.shape.Line;
import slabwright.shape.Region;
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.Spot;
import slabwright.units.BareUnit;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/** Corners of a polygon, the path of a strip, or a plain line. */
final class PolylineShaper implements Shaper {
  private final PolylineDraft chain;
  private final TypedLength widths;
  private final MarkShape shape;
  private final RecentSizes sizes;

  PolylineShaper(MarkShape shape, RecentSizes sizes, Supplier<UnitSystem> units) {
    chain = new PolylineDraft(units);
    widths = new TypedLength(LengthUse.OPENING, units);
    this.shape = shape;
    this.sizes = sizes;
  }

  private int fewest() {
    return shape == MarkShape.CORNERS ? 3 : 2;
  }

  @Override
  public Message prompt() {
    if (chain.isEmpty()) {
      return shape == MarkShape.PATH
          ? Message.of("desk.tool.mark.where-the-trench-begins")
          : Message.of("desk.tool.mark.where-it-begins");
    }
    return chain.size() < fewest()
        ? Message.of("desk.tool.mark.click-on")
        : Message.of("desk.tool.mark.enter-ends-it");
  }

  @Override
  public List<Form> press(Touch t) {
    boolean again =
        chain.size() >= fewest()
            && (t.clicks() > 1 || near(chain.last(), t) || near(chain.first(), t));
    if (again) {
      return finish().forms();
    }
    chain.add(t.at());
    return List.of();
  }

  private static boolean near(Vec p, Touch t) {
    return p.distanceTo(t.at()) <= t.reach() / 2;
  }

  /** Before a trench begins a length is its width. */
  private boolean isWidth(String line) {
    return chain.isEmpty() && shape == MarkShape.PATH && !TypedSpot.isOne(line);
  }

  private Typed finish() {
    if (chain.size() < fewest()) {
      return Typed.refused(Message.of("desk.tool.mark.needs-points", fewest()));
    }
    List<Spot> spots = chain.points().stream().map(Spot::of).toList();
    chain.clear();
    return Typed.done(
        switch (shape) {
          case PATH -> new Form.Strip(spots, sizes.trench());
          case CORNERS -> new Form.Polygon(spots);
          default -> new Form.Trace(spots);
        });
  }

  @Override
  public void hover(Touch t) {
    chain.hover(t.at());
  }

  @Override
  public Optional<Message> entry() {
    return chain.isEmpty()
        ? Optional.of(
            shape == MarkShape.PATH ? Message.of("desk.tool.width") : Message.of("desk.tool.place"))
        : Optional.of(Message.of("desk.tool.length"));
  }

  @Override
  public Message example() {
    return chain.isEmpty() && shape != MarkShape.PATH
        ? Message.of("desk.tool.example.place")
        : Shaper.super.example();
  }

  @Override
  public boolean takesPlaces() {
    return true;
  }

  @Override
  public boolean steer(int right, int up) {
    return chain.steer(right, up);
  }

  @Override
  public Optional<BareUnit> bare() {
    return Optional.of(isWidth("") ? widths.bare() : chain.bare());
  }

  @Override
  public Optional<String> meaning(String line) {
    return isWidth(line) ? widths.meaning(line) : chain.meaning(line);
  }

  @Override
  public Typed type(String line) {
    if (isWidth(line)) {
      Result<Length> read = widths.read(line);
      if (read instanceof Result.Refused<Length> refused) {
        return Typed.refused(refused.message());
      }
      sizes.setTrench(read.orThrow());
      return Typed.taken();
    }
    return line.isBlank() ? finish() : Typed.of(chain.typed(line));
  }

  @Override
  public boolean stepBack() {
    return chain.removeLast();
  }

  @Override
  public boolean clear() {
    return chain.clear();
  }

  @Override
  public Optional<Vec> from() {
    return chain.isEmpty() ? Optional.empty() : Optional.of(chain.last());
  }

  @Override
  public List<Vec> corners() {
    return chain.points();
  }

  @Override
  public List<Ink> over(OverlayScale paper) {
    List<Ink> inks = new ArrayList<>();
    if (!chain.isEmpty() && shape == MarkShape.PATH && chain.tip().distanceTo(chain.last()) > 1) {
      List<Vec> path = new ArrayList<>(chain.points());
      path.add(chain.tip());
      Region strip = Region.strip(new Line(path), sizes.trench().mm() / 2);
      inks.add(Stroke.outline(Pen.of(0.4, OverlayInks.LIVE), strip));
    }
    inks.addAll(chain.over(paper));
    if (chain.size() >= 2 && shape == MarkShape.CORNERS) {
      inks.add(OverlayInks.guide(chain.tip(), chain.first()));
    }
    return inks;
  }
}
