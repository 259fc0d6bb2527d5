package slabwright.sheets;

import java.time.LocalDate;
import java.util.Set;

/**
 * How sheets are made.
 *
 * @param date the day printed in the title blocks
 * @param declined keys of advice that the client declines, each an area's id, a slash and the
 *     advice's id
 */
public record SheetOptions(Paper paper, LocalDate date, Set<String> declined) {
  public SheetOptions {
    declined = Set.copyOf(declined);
  }

  /** Sheets on the paper and day, no advice declined. */
  public SheetOptions(Paper paper, LocalDate date) {
    this(paper, date, Set.of());
  }
}
