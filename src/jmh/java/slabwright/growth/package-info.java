/**
 * How the cost of each computation grows as its input doubles: {@link
 * slabwright.growth.GrowthBench} (entry) on the invented inputs of {@link
 * slabwright.growth.GrowingFloors} and {@link slabwright.growth.GrowingDrawings}. {@link
 * slabwright.growth.DraggedMarkBench} (entry) times the frames of a dragged mark.
 */
package slabwright.growth;
