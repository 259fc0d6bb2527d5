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
import slabwright.desk.tool.Touch;
import slabwright.drawing.Ink;
import slabwright.drawing.Pen;
import slabwright.drawing.Stroke;
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.Spot;
import slabwright.units.BareUnit;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Result;
import slabwright.units.UnitSystem;

/** A rectangle, circle or round-ended strip between two corners, or of typed sizes. */
final class BoxShaper implements Shaper {
  private final MarkShape shape;
  private final TypedLength sizes;
  private final TypedLength places;
  private Optional<Vec> from = Optional.empty();
  private Vec to = Vec.ZERO;

  /**
   * A shaper.
   *
   * @param use what its sides are
   */
  BoxShaper(MarkShape shape, LengthUse use, Supplier<UnitSystem> units) {
    sizes = new TypedLength(use, units);
    places = new TypedLength(LengthUse.PLACE, units);
    this.shape = shape;
  }

  @Override
  public Message prompt() {
    if (from.isEmpty()) {
      return shape == MarkShape.ROUND
          ? Message.of("desk.tool.mark.click-its-middle")
          : Message.of("desk.tool.mark.click-one-corner");
    }
    return shape == MarkShape.ROUND
        ? Message.of("desk.tool.mark.click-its-rim")
        : Message.of("desk.tool.mark.click-the-other-corner");
  }

  @Override
  public List<Form> press(Touch t) {
    to = t.at();
    if (from.isEmpty()) {
      from = Optional.of(t.at());
      return List.of();
    }
    return finish(t);
  }

  @Override
  public void drag(Touch t) {
    to = held(t);
  }

  @Override
  public List<Form> release(Touch t) {
    return from.isPresent() && from.get().distanceTo(t.at()) > 2 * t.reach()
        ? finish(t)
        : List.of();
  }

  private List<Form> finish(Touch t) {
    to = held(t);
    Optional<Form> form = from.flatMap(f -> form(f, to));
    form.ifPresent(f -> clear());
    return form.map(List::of).orElse(List.of());
  }

  /** Shift makes both sides equal. */
  private Vec held(Touch t) {
    if (!t.shift() || from.isEmpty()) {
      return t.at();
    }
    Vec d = t.at().minus(from.get());
    double side = Math.max(Math.abs(d.x()), Math.abs(d.y()));
    return from.get().plus(new Vec(side * Math.signum(d.x()), side * Math.signum(d.y())));
  }

  private Optional<Form> form(Vec a, Vec b) {
    double w = Math.abs(a.x() - b.x());
    double h = Math.abs(a.y() - b.y());
    Spot middle = Spot.of(a.towards(b, 0.5));
    if (shape == MarkShape.ROUND) {
      double r = a.distanceTo(b);
      return r < 1 ? Optional.empty() : Optional.of(new Form.Circle(Spot.of(a), Length.mm(r)));
    }
    if (w < 1 || h < 1) {
      return Optional.empty();
    }
    if (shape == MarkShape.ROUND_ENDED) {
      boolean wide = w >= h;
      return Optional.of(
          new Form.RoundEnded(
              middle, Length.mm(Math.max(w, h)), Length.mm(Math.min(w, h)), wide ? 0 : 90));
    }
    return Optional.of(new Form.Rectangle(middle, Length.mm(w), Length.mm(h), Length.ZERO, 0));
  }

  @Override
  public void hover(Touch t) {
    to = held(t);
  }

  @Override
  public Optional<Message> entry() {
    return Optional.of(
        from.isEmpty()
            ? Message.of("desk.tool.place")
            : shape == MarkShape.ROUND
                ? Message.of("desk.tool.diameter")
                : Message.of("desk.tool.size"));
  }

  @Override
  public Message example() {
    return from.isEmpty()
        ? Message.of("desk.tool.example.place")
        : shape == MarkShape.ROUND
            ? Message.of("desk.tool.example.diameter")
            : Message.of("desk.tool.example.size");
  }

  @Override
  public Optional<BareUnit> bare() {
    return Optional.of(from.isEmpty() ? places.bare() : sizes.bare());
  }

  @Override
  public Optional<String> meaning(String line) {
    return from.isEmpty() ? TypedSpot.meaning(line, places) : SizePair.meaning(line, sizes);
  }

  @Override
  public Typed type(String line) {
    if (from.isEmpty()) {
      return Typed.of(TypedSpot.read(line, places::read), this::begin);
    }
    Result<SizePair> read = SizePair.read(line, sizes::read);
    if (read instanceof Result.Refused<SizePair> refused) {
      return Typed.refused(refused.message());
    }
    Form made = typed(read.orThrow());
    clear();
    return Typed.done(made);
  }

  private List<Form> begin(Spot at) {
    from = Optional.of(at.vec());
    to = at.vec();
    return List.of();
  }

  private Form typed(SizePair size) {
    Vec a = from.orElseThrow();
    Length w = size.first();
    Length h = size.second();
    if (shape == MarkShape.ROUND) {
      return new Form.Circle(Spot.of(a), Length.mm(w.mm() / 2));
    }
    double right = to.x() < a.x() ? -1 : 1;
    double up = to.y() < a.y() ? -1 : 1;
    Spot middle = Spot.of(a.plus(new Vec(right * w.mm() / 2, up * h.mm() / 2)));
    if (shape == MarkShape.ROUND_ENDED) {
      boolean wide = w.mm() >= h.mm();
      return new Form.RoundEnded(middle, wide ? w : h, wide ? h : w, wide ? 0 : 90);
    }
    return new Form.Rectangle(middle, w, h, Length.ZERO, 0);
  }

  @Override
  public boolean stepBack() {
    return clear();
  }

  @Override
  public boolean clear() {
    boolean had = from.isPresent();
    from = Optional.empty();
    return had;
  }

  @Override
  public Optional<Vec> from() {
    return shape == MarkShape.ROUND ? from : Optional.empty();
  }

  @Override
  public List<Ink> over(OverlayScale paper) {
    List<Ink> inks = new ArrayList<>();
    // A typed corner is seen before the pointer is anywhere.
    from.ifPresent(f -> inks.addAll(OverlayInks.handle(f, paper)));
    from.flatMap(f -> form(f, to))
        .ifPresent(
            form -> {
              inks.add(
                  Stroke.outline(
                      Pen.of(0.55, OverlayInks.LIVE), form.region(Math.max(0.5, paper.mm() / 10))));
              Vec a = from.orElseThrow();
              String size =
                  shape == MarkShape.ROUND
                      ? paper.length(2 * a.distanceTo(to))
                      : paper.length(Math.abs(to.x() - a.x()))
                          + " × "
                          + paper.length(Math.abs(to.y() - a.y()));
              Vec beside = to.plus(new Vec(18 * paper.mm(), -7 * paper.mm()));
              inks.addAll(OverlayInks.plate(beside, size, paper));
            });
    return inks;
  }
}
