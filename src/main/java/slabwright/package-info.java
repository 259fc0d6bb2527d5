/**
 * Slabwright: site plans for crews that finish concrete floors.
 *
 * <p>{@link Main} is the one way in: with arguments the command line (slabwright.cli), without them
 * the desk (slabwright.desk). The rooms below are the packages beside it; DEVELOPERS.md draws how
 * they stand on one another, and the tests of the house hold them to it.
 */
package slabwright;
