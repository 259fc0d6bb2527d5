/**
 * What protects the floor while dye is misted through a stencil: the band that is pressed down, the
 * paper skirt around the blank, upright masking where the mist meets a wall, and the dye itself.
 * Frame: millimetres from the blank's top-left corner as read, x right, y down.
 *
 * <p>{@link Masking} (entry) from {@link MaskingParameters} and {@link FloorAround}, made by {@link
 * MaskingBuilder}: {@link PaperRunPlanner} and {@link PaperRun}, {@link UprightFinder} and {@link
 * UprightMasking}. {@link DyeNeed} (entry) with {@link DyeRates} says how much dye.
 */
package slabwright.inlay.masking;
