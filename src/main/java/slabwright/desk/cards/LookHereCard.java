package slabwright.desk.cards;

import java.util.List;
import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.FloorWarnings;
import slabwright.desk.model.compute.SelectedAreaResults;
import slabwright.floor.FloorNote;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.ComputedInlay;

/** What a floor person would point at, each with the way to its place. */
public final class LookHereCard extends Card {
  private final SelectedAreaResults answers;
  private final PlaceNavigator places;
  private Optional<FloorTakeoff> of = Optional.empty();
  private List<ComputedInlay> inlays = List.of();
  private List<FloorNote> notes = List.of();

  public LookHereCard(DeskContext bench, SelectedAreaResults answers, PlaceNavigator places) {
    super(bench, "look-here", bench.words().say("desk.cards.look-here.title"));
    this.answers = answers;
    this.places = places;
  }

  private List<FloorNote> now() {
    if (!of.equals(answers.takeoff()) || !inlays.equals(answers.inlays())) {
      of = answers.takeoff();
      inlays = answers.inlays();
      notes = of.map(t -> FloorWarnings.of(t, inlays)).orElse(List.of());
      body().getChildren().setAll(notes.stream().map(n -> row(n).row(words())).toList());
    }
    return notes;
  }

  private FindingRow row(FloorNote n) {
    Optional<Runnable> show = n.where().map(v -> () -> places.show(v));
    return new FindingRow(FindingRow.Sign.LOOK, words().say(n.message()), show);
  }

  @Override
  public boolean isWanted() {
    return !now().isEmpty();
  }
}
