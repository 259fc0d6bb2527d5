package slabwright.work.handover;

import java.util.ArrayList;
import java.util.List;
import slabwright.units.Message;
import slabwright.work.AreaWorkPlan;
import slabwright.work.book.ProductKind;
import slabwright.work.coat.CoatPlan;

/**
 * How a client keeps a floor, by what lies on top of it and where it is. Common practice, no
 * source; the product's data sheet comes first.
 */
final class CareList {
  /** What the last coat leaves on the floor. */
  enum Top {
    /** A film that wears: recoated where it looks worn. */
    FILM,
    /** A sealer in the pores: laid again when water no longer beads. */
    PENETRATING,
    /** Dye and no sealer over it. */
    BARE;

    /** A topcoat is a film, and so is a sealer that the book says lets no vapour through. */
    static Top of(CoatPlan last) {
      if (last.product().is(ProductKind.BASE_DYE)) {
        return BARE;
      }
      boolean tight = last.product().suits().breathing().maybe().map(b -> !b).orElse(false);
      return last.product().is(ProductKind.TOPCOAT) || tight ? FILM : PENETRATING;
    }
  }

  private CareList() {}

  static List<Message> of(AreaWorkPlan area, CoatPlan last) {
    List<Message> care = new ArrayList<>();
    if (area.floor().isOutdoors()) {
      outdoors(care);
    } else {
      indoors(care);
    }
    if (last.grit().maybe().filter(kg -> kg > 0).isPresent()) {
      care.add(Message.of("work.reopening.grit-needs-a-brush"));
    }
    care.add(
        switch (Top.of(last)) {
          case FILM -> Message.of("work.reopening.recoat-by-wear");
          case PENETRATING -> Message.of("work.reopening.recoat-when-water-no-longer");
          case BARE -> Message.of("work.reopening.nothing-over-the-dye");
        });
    return List.copyOf(care);
  }

  private static void indoors(List<Message> care) {
    care.add(Message.of("work.reopening.no-mats-tape-or-plants"));
    care.add(Message.of("work.reopening.felt-under-chairs-lift-dont"));
    care.add(Message.of("work.reopening.dust-mop-daily-damp-mop"));
    care.add(Message.of("work.reopening.wipe-up-oil-wine-and"));
  }

  private static void outdoors(List<Message> care) {
    care.add(Message.of("work.reopening.rain-and-dew-off"));
    care.add(Message.of("work.reopening.no-pots-or-rubber"));
    care.add(Message.of("work.reopening.sweep-and-rinse"));
    care.add(Message.of("work.reopening.leaves-and-grease"));
    care.add(Message.of("work.reopening.no-salt"));
    care.add(Message.of("work.reopening.look-after-each-winter"));
  }
}
