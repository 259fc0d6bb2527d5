/**
 * Cards of the Measure stage: the room as it was measured.
 *
 * <p>{@link AreaCard} (entry: the floor area), then what is selected in it: {@link WallCard},
 * {@link CornerCard}, {@link DoorwayCard}; {@link UnderlayCard} and {@link TapeCard} with {@link
 * ReadingsCard} and {@link TypedTurn} where the room comes from; {@link SiteCard} for the job.
 */
package slabwright.desk.cards.measure;
