/**
 * The screen with nothing open: begin, open, recover, or look at a sample.
 *
 * <p>{@link StartScreen} (entry) offers {@link StartActions}, each as a {@link StartChoice}, with a
 * {@link StartPicture}; {@link RecoveredName} says what a plan that can be gone on with is called.
 */
package slabwright.desk.start;
