/**
 * The numbers as JSON, keys as in docs/json.md. The only place of Jackson beside slabwright.store.
 *
 * <p>{@link TallyJson} (entry: floors) with {@link TallyParts} and {@link PrepJson}; {@link
 * InlayJson} (entry: a graphic) with {@link SettingOutJson}; {@link ProofJson} (entry: a proof
 * check); {@link WorkJson} (entry: the work) with {@link RecordJson}, {@link OutlookJson}, {@link
 * CrewJson} and {@link AreaTotals}. {@link JsonText} writes numbers in full.
 */
package slabwright.sheets.json;
