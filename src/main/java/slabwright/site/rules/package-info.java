/**
 * What must hold of a site. Used by slabwright.site.edit and slabwright.store; knows the model
 * alone.
 *
 * <p>{@link SiteValidator} (entry: the list of rules, every fault at once), then {@link
 * OutlineRules}, {@link MarkRules}, {@link DetailRules} and {@link InlaySpecRules}; {@link IdRules}
 * and {@link SizeRules} are checks that all of them share.
 */
package slabwright.site.rules;
