package slabwright.work.step;

/**
 * One coat of a finish system.
 *
 * @param place of its product in the finish system, from 1; a product may have several
 * @param number of the coat among those of that place, from 1
 */
public record CoatNumber(int place, int number) {}
