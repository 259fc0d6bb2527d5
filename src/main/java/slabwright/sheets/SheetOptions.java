package slabwright.sheets;

import java.time.LocalDate;

/**
 * How sheets are made.
 *
 * @param date the day printed in the title blocks
 */
public record SheetOptions(Paper paper, LocalDate date) {}
