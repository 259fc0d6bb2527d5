package slabwright.sheets;

import java.util.List;
import slabwright.floor.HandPiece;
import slabwright.floor.Ways;
import slabwright.units.UnitSystem;

/** The numbers that pockets have on sheet 2. */
final class PocketNumbers {
  private final List<HandItem> numbered;

  PocketNumbers(Ways ways, UnitSystem units) {
    numbered = HandSheet.numbered(new HandList(ways, units));
  }

  /** Its number as on the plan. */
  String of(HandPiece pocket) {
    for (int i = 0; i < numbered.size(); i++) {
      if (numbered.get(i).at().filter(pocket.place()::equals).isPresent()) {
        return Integer.toString(i + 1);
      }
    }
    return "";
  }
}
