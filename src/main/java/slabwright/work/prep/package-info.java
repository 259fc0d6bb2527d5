/**
 * Preparing the floor: levelling, residue, grit steps, filler, hours and bags, zone by zone. Areas
 * in mm², lengths in mm, volumes in mm³, masses in kg.
 */
package slabwright.work.prep;
