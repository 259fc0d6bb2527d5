/**
 * What holds a machine up, asked for on request and not part of the take-off: how much floor each
 * width reaches, which place stops it, and what is gained when that place is widened. Areas in mm²,
 * lengths in mm.
 *
 * <p>{@link ReachAnalysis} (entry) gives a {@link ReachCurve} of {@link ReachPoint}; {@link
 * BottleneckSearch} tells each {@link Bottleneck}; {@link PocketAccess} the floor behind one. It
 * asks a {@link PassFloor}: the {@link NearFloor} about a pocket, else the {@link WholeFloor}.
 * {@link PassageFinder} gives each {@link MachinePassage}: doorways, gaps ({@link GapFinder}) and
 * thresholds, whether a machine fits and by how much.
 */
package slabwright.floor.reach;
