/**
 * The work on a site: prep, coats, batches, air, days, cautions, cost and the papers handed over.
 * Everything is a value computed from a site, its floor take-offs, its inlays and the shop book, so
 * that sheets, reports and the window show the same numbers.
 */
package slabwright.work;
