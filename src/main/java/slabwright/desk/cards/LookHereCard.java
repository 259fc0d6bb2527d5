package slabwright.desk.cards;

import java.util.List;
import java.util.Optional;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.compute.SelectedAreaWarnings;
import slabwright.floor.FloorNote;

/** What a floor person would point at, each with the way to its place. */
public final class LookHereCard extends Card {
  private final SelectedAreaWarnings warnings;
  private final PlaceNavigator places;
  private List<FloorNote> shown = List.of();

  public LookHereCard(DeskContext bench, SelectedAreaWarnings warnings, PlaceNavigator places) {
    super(bench, "look-here", bench.words().say("desk.cards.look-here.title"));
    this.warnings = warnings;
    this.places = places;
  }

  @Override
  protected void refresh() {
    if (!shown.equals(warnings.notes())) {
      shown = warnings.notes();
      body().getChildren().setAll(shown.stream().map(n -> row(n).row(words())).toList());
    }
  }

  private FindingRow row(FloorNote n) {
    Optional<Runnable> show = n.where().map(v -> () -> places.show(v));
    return new FindingRow(FindingRow.Sign.LOOK, words().say(n.message()), show);
  }

  @Override
  public boolean isWanted() {
    return !warnings.notes().isEmpty();
  }
}
