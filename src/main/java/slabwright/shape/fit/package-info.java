/**
 * What is fitted to points: a plane seen by a camera, and the normal equations of least squares.
 *
 * <p>{@link Homography} takes four corners to four others and maps any point of that plane. {@link
 * SymmetricSystem} solves a small symmetric system by Hipparchus, which stands here alone.
 */
package slabwright.shape.fit;
