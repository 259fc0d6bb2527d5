/**
 * Cards of the Inlay stage: from the graphic to the cut files.
 *
 * <p>{@link SelectedInlay} (entry: which inlay the cards speak of). {@link GraphicCard}, {@link
 * InlayCard}, {@link TraceCard} (a graphic that was a picture) with {@link SignCorners}, {@link
 * OnFloorCard}; {@link StencilCard} with {@link OversprayFields}, {@link StencilSpecChange} and
 * {@link FilmSpecChange}, {@link ColoursCard} with {@link BaseLook} and {@link ColourUse}, {@link
 * ChecksCard} with {@link InlayFindings} and {@link DoorwayDatum}, {@link PanelsCard}, {@link
 * SeamsCard} in a {@link NudgeStep}; {@link CutCard} and {@link ProofCard}.
 */
package slabwright.desk.cards.inlay;
