package slabwright.sheets;

import slabwright.drawing.Drawing;

/**
 * One printable page in true size.
 *
 * @param name a short name for files, such as {@code 2-prep-and-hand-work}
 * @param title the sheet's title
 */
public record Page(String name, String title, Paper paper, Drawing drawing) {}
