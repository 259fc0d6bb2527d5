/**
 * A graphic laid into the floor: from its colours to stencils, panels, masking and cut files. Both
 * doors (window and command line) ask {@link slabwright.inlay.InlayPlan}.
 */
package slabwright.inlay;
