package slabwright.work.air;

/**
 * How much of a product is a solvent.
 *
 * @param share by volume
 */
public record SolventShare(Solvent solvent, double share) {}
