/**
 * Counter tops and stairs of concrete: small jobs of their own, ground by hand. Hours and dust here
 * are in no figure of the floor's.
 *
 * <p>{@link TopPlan} (entry) of a {@link TopTakeoff}; a {@link TopPass} is one grit over all of it,
 * hours in persons' hours, dust in kg.
 */
package slabwright.work.top;
