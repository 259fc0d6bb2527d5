/**
 * The plan file: JSON, versioned, every fault told with its place; saved atomically, journalled,
 * recovered.
 *
 * <p>{@link PlanFile} (entry: read, write, save); {@link ForecastFile} (entry: a forecast as CSV).
 * Codecs from the top down: {@link SiteCodec}, {@link AreaCodec}, {@link MarkCodec} and {@link
 * FormCodec}, {@link FloorUseCodec}, {@link InlayCodec} and {@link StencilChangesCodec}; beneath
 * them {@link FieldReader}, {@link FieldWriter}, {@link EnumWords}, {@link JsonReader} and {@link
 * JsonValue}. {@link PlanUpgrader} lifts an older version.
 *
 * <p>On disk: {@link AtomicFile}, {@link Journal} (what to recover), {@link ReleaseArchive}
 * (releases frozen beside the plan), {@link FolderDeletion}, {@link GraphicFiles} (a graphic and
 * whether it is still the accepted one).
 */
package slabwright.store;
