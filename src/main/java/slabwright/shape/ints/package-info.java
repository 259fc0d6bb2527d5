/**
 * Collections of plain ints for the geometry above, where boxed numbers would cost too much. No
 * geometry here.
 *
 * <p>{@link IntList} (entry), {@link IntGroups} (numbers sorted into groups), {@link PairNumbering}
 * (a number for each pair of ints) and {@link UnionFind}. Nothing is checked beyond array bounds;
 * these never leave slabwright.shape and its users within one computation.
 */
package slabwright.shape.ints;
