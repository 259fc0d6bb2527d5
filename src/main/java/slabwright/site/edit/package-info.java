/**
 * The closed set of changes to a site. A change turns one site into the next or says why it can't.
 *
 * <p>{@link Edit} (entry: apply); the kinds by what they change: {@link SiteEdit}, {@link
 * AreaEdit}, {@link OutlineEdit}, {@link MarkEdit}. {@link History} is undo as positions in a list
 * of sites. {@link MarkFollowing} (marks move with their wall), {@link CornerEdits} and {@link
 * ListEdits} are helpers.
 */
package slabwright.site.edit;
