/**
 * Colour and coats: how much of a product, in which kits and batches, how thick, in which lanes.
 * Areas in mm², volumes in mm³, coverage in mm²/mm³, thickness in mm, work rates in mm² an hour.
 */
package slabwright.work.coat;
