package slabwright.desk.tool;

import java.util.List;
import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.edit.InlayChange;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.model.input.TypedLength;
import slabwright.desk.model.input.TypedSpot;
import slabwright.drawing.Ink;
import slabwright.shape.Vec;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Spot;
import slabwright.site.edit.AreaEdit;
import slabwright.units.BareUnit;
import slabwright.units.Length;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;

/** Puts the middle of an inlay where one clicks; its width can be typed. */
public final class PlaceTool implements Tool {
  private final DeskContext bench;
  private final Runnable choose;
  private final TypedLength widths;
  private final TypedLength places;
  private Optional<Vec> tip = Optional.empty();

  /**
   * A tool.
   *
   * @param choose asks for a graphic, when the area has none yet
   */
  public PlaceTool(DeskContext bench, Runnable choose) {
    this.bench = bench;
    widths = new TypedLength(LengthUse.LARGE_SIZE, () -> bench.desk().site().units());
    places = new TypedLength(LengthUse.PLACE, () -> bench.desk().site().units());
    this.choose = choose;
  }

  private Optional<Inlay> inlay() {
    Optional<FloorArea> area = bench.focus().areaOf(bench.desk().site());
    return bench
        .focus()
        .single()
        .filter(PlanItem.OfInlay.class::isInstance)
        .flatMap(p -> area.flatMap(a -> a.inlay(((PlanItem.OfInlay) p).id())))
        .or(() -> area.flatMap(a -> a.inlays().stream().findFirst()));
  }

  @Override
  public Message prompt() {
    return inlay().isEmpty()
        ? Message.of("desk.tool.place-tool.drop-an-svg")
        : Message.of("desk.tool.place-tool.where-its-middle-belongs");
  }

  @Override
  public void hover(Touch t) {
    tip = Optional.of(t.at());
  }

  @Override
  public void press(Touch t) {
    Optional<Inlay> i = inlay();
    if (i.isEmpty()) {
      choose.run();
    } else {
      put(InlayChange.placed(i.get(), Spot.of(t.at()), i.get().turn()));
    }
  }

  private void put(Inlay i) {
    String area = bench.focus().area().orElseThrow().id();
    if (bench.desk().push(new AreaEdit.PutInlay(area, i)).isOk()) {
      bench.focus().select(new PlanItem.OfInlay(i.id()));
    }
  }

  @Override
  public Optional<Message> entry() {
    return inlay().map(i -> Message.of("desk.tool.width"));
  }

  @Override
  public boolean takesPlaces() {
    return true;
  }

  @Override
  public Optional<BareUnit> bare() {
    return Optional.of(widths.bare());
  }

  @Override
  public Optional<String> meaning(String line) {
    return TypedSpot.isOne(line) ? TypedSpot.meaning(line, places) : widths.meaning(line);
  }

  @Override
  public Optional<Message> type(String line) {
    if (TypedSpot.isOne(line)) {
      return place(TypedSpot.read(line, places::read));
    }
    Result<Length> read = widths.read(line);
    if (read instanceof Result.Refused<Length> refused) {
      return Optional.of(refused.message());
    }
    inlay().ifPresent(i -> put(InlayChange.wide(i, read.orThrow())));
    return bench.desk().refusal().map(Refusal::message);
  }

  private Optional<Message> place(Result<Spot> at) {
    if (at instanceof Result.Refused<Spot> refused) {
      return Optional.of(refused.message());
    }
    inlay().ifPresent(i -> put(InlayChange.placed(i, at.orThrow(), i.turn())));
    return bench.desk().refusal().map(Refusal::message);
  }

  @Override
  public List<Ink> over(OverlayScale paper) {
    Optional<Inlay> i = inlay();
    return tip.isEmpty() || i.isEmpty()
        ? List.of()
        : List.of(
            OverlayInks.guide(i.get().middle().vec(), tip.get()),
            OverlayInks.dot(tip.get(), 2, OverlayInks.LIVE));
  }
}
