/**
 * The use cases that both doors share: compute a site, name and write its files, tell what changed.
 *
 * <p>{@link SiteResult} (entry: everything computed of a site), watched through {@link
 * TaskProgress}; {@link UsableAreas} leaves out areas that can't be; {@link SiteTally} is the
 * floors alone; {@link AreaCache} keeps what an edit left as it was. Names of files: {@link
 * InlayFileNames} (no two inlays' files alike). {@link ProofRequest} checks what the sign shop sent
 * back. {@link RefusedInput} is one clear sentence for a person. Around a plan: {@link PlanChanges}
 * (what differs between two states), {@link SiblingFiles} (graphics and underlay beside it), {@link
 * PinnedPhotos} (photos of places), {@link SamplePlans}.
 *
 * <p>What is written stands in {@code project.export}; opening and saving a plan, its journal, and
 * what lies beside it in {@code project.plan}.
 */
package slabwright.project;
