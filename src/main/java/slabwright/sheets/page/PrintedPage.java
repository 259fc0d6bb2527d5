package slabwright.sheets.page;

import slabwright.drawing.Drawing;

/**
 * One printable page in true size.
 *
 * @param name a short name for files, such as {@code 2-prep-and-hand-work}
 * @param title the sheet's title
 * @param area name of the floor area; empty when the page speaks of the whole site
 */
public record PrintedPage(
    String name, String title, String area, PaperSize paper, Drawing drawing) {}
