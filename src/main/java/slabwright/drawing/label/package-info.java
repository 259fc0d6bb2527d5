/**
 * Places for words on paper, so that no two lie on each other.
 *
 * <p>{@link LabelPlacer} (entry: first come, first served, outwards with a leader when all wishes
 * are taken), {@link Label} (words with their places in order of liking), {@link
 * DimensionStandOffs} (how far dimensions stand off where an outline turns back).
 */
package slabwright.drawing.label;
