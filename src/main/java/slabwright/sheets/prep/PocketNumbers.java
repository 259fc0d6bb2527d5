package slabwright.sheets.prep;

import java.util.List;
import slabwright.floor.HandWorkPiece;
import slabwright.floor.reach.ReachAnalysis;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** The numbers that pockets have on sheet 2. */
final class PocketNumbers {
  private final List<HandWorkItem> numbered;

  PocketNumbers(ReachAnalysis ways, UnitSystem units, Words words) {
    numbered = PrepSheet.numbered(new HandWorkList(ways, units, words));
  }

  /** Its number as on the plan. */
  String of(HandWorkPiece pocket) {
    for (int i = 0; i < numbered.size(); i++) {
      if (numbered.get(i).at().filter(pocket.place()::equals).isPresent()) {
        return Integer.toString(i + 1);
      }
    }
    return "";
  }
}
