package slabwright.desk.tool.mark;

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
import slabwright.shape.Vec;
import slabwright.site.Form;
import slabwright.site.Spot;
import slabwright.units.BareUnit;
import slabwright.units.Message;
import slabwright.units.UnitSystem;

/** A single place, set with one click. */
final class PointShaper implements Shaper {
  private final TypedLength places;
  private Optional<Vec> tip = Optional.empty();

  PointShaper(Supplier<UnitSystem> units) {
    places = new TypedLength(LengthUse.PLACE, units);
  }

  @Override
  public Message prompt() {
    return Message.of("desk.tool.mark.click-where-it-is");
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
  public Optional<Message> entry() {
    return Optional.of(Message.of("desk.tool.place"));
  }

  @Override
  public Message example() {
    return Message.of("desk.tool.example.place");
  }

  @Override
  public Optional<BareUnit> bare() {
    return Optional.of(places.bare());
  }

  @Override
  public Optional<String> meaning(String line) {
    return TypedSpot.meaning(line, places);
  }

  @Override
  public Typed type(String line) {
    return Typed.of(TypedSpot.read(line, places::read), at -> List.of(new Form.Place(at)));
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
