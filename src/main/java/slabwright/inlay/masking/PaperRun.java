package slabwright.inlay.masking;

import slabwright.inlay.panel.BlankSide;

/**
 * Masking paper along one side of the blank.
 *
 * @param side of the blank as read
 * @param strips laid side by side
 * @param width of the paper, mm
 * @param length of each strip, mm
 * @param from where it begins, mm from the left corner of a top or bottom side, the top corner of a
 *     left or right one; less than 0 begins beyond that corner
 */
public record PaperRun(BlankSide side, int strips, double width, double length, double from) {}
