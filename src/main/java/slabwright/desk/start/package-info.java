/**
 * The screen with nothing open: begin, open, recover, or look at a sample.
 *
 * <p>{@link StartScreen} (entry) offers {@link StartActions}, each as a large button, with a {@link
 * StartPicture}; a plan that can be gone on with is a {@link StartEntry}, drawn as a {@link
 * PlanThumb}.
 */
package slabwright.desk.start;
