/**
 * Sheet 5, quantities: what is measured, bought and mixed, by floor area.
 *
 * <p>{@link QuantitiesSheet} (entry); {@link MarkCounts} (what is marked), {@link InlayQuantities},
 * and {@link WorkQuantities} with {@link PrepQuantities}, {@link TopQuantities} and {@link
 * FillerQuantities}. {@link Crowds} tells rows together that are too many to be read.
 */
package slabwright.sheets.quantities;
