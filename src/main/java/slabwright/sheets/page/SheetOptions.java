package slabwright.sheets.page;

import java.time.LocalDate;

/**
 * How sheets are made.
 *
 * @param date the day printed in the title blocks
 */
public record SheetOptions(PaperSize paper, LocalDate date) {}
