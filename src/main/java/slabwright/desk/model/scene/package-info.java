/**
 * The plan as it lies on the screen: inks with the thing they stand for, to be painted and hit.
 *
 * <p>{@link Pictures} (entry) keeps a {@link FloorPicture} made by {@link FloorPictureMaker}, a
 * list of {@link PlanItemShape}. {@link ExpectedLook} is the floor as it should look when finished,
 * painted for a window. {@link SeamGrip} is what tools and cards hold on to. {@link PaleFloors} are
 * the floor areas beside the one looked at, each a {@link PaleFloor}.
 */
package slabwright.desk.model.scene;
