package slabwright.sheets.page;

import java.time.LocalDate;
import slabwright.words.Words;

/**
 * How sheets are made.
 *
 * @param date the day printed in the title blocks
 * @param words of the language they are read in
 */
public record SheetOptions(PaperSize paper, LocalDate date, Words words) {}
