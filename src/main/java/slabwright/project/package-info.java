/**
 * The use cases that both doors share: compute a site, name and write its files, tell what changed.
 *
 * <p>{@link SiteResult} (entry: everything computed of a site), watched through {@link
 * TaskProgress}. Writing: {@link OutFolder} (all or nothing, with a manifest), {@link
 * InlayCutFiles}, {@link InlayFileNames} (no two inlays' files alike); {@link RefusedInput} is one
 * clear sentence for a person. Around a plan: {@link PlanChanges} (what differs between two
 * states), {@link SiblingFiles} (graphics and underlay beside it), {@link SamplePlans}.
 *
 * <p>Parts of a site: {@link SiteTally} (the floors alone), {@link GraphicResult} (a graphic with
 * no plan around it).
 */
package slabwright.project;
