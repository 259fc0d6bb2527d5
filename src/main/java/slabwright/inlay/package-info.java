/**
 * A graphic laid into the floor: from its colours to stencils, panels, masking and cut files. Above
 * artwork, stencil, panel and masking; below cutfile and proof.
 *
 * <p>{@link PlacedInlay} (entry: an inlay on its floor, its colours by {@link DyeNames}) and {@link
 * InlayPlan} (entry: all of it, both doors ask here). {@link GraphicReader} reads the {@link
 * GraphicFile} by its {@link GraphicSettings} and refuses what {@link GraphicBudget} finds too
 * much; {@link DyedGraphic} and {@link DyeLayerBuilder} make layers of its colours; {@link
 * InlayContext}, {@link InlayContextBuilder} and {@link Placement} say what lies around; {@link
 * InlayParameters} are the settings by who needs them; {@link FixAcceptance} gives the settings
 * that make the next plan mend what a check found; {@link OpenQuestions} tells what a person must
 * still decide of its colours; {@link ComputedInlay} is the plan worked out or why not; {@link
 * InlayCache} works one out again only when what it depends on has changed.
 */
package slabwright.inlay;
