/**
 * Cards of the Finish stage: slab, sealer, coats, air, days and what the job really took.
 *
 * <p>{@link FinishCard} (entry), then {@link SlabCard} with {@link MoistureFields} and {@link
 * SlabChange}, {@link SealerCard} with {@link AdviceRows}, {@link CoatsCard}, {@link AirCard},
 * {@link DaysCard}, {@link CautionsCard}, {@link BookCard}, {@link ActualsCard}.
 */
package slabwright.desk.cards.finish;
