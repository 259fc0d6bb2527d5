/**
 * Cards of the Mark stage: what lies on the floor.
 *
 * <p>{@link MarkCard} (entry: the selected mark) with {@link KindFields} for its kind and {@link
 * FormFields} for its form, of {@link BoxFields} and {@link PointFields}. {@link MarksCard} lists
 * all marks, {@link MarkReordering} drags them over one another. {@link PhotosCard} has the photos
 * pinned to it.
 */
package slabwright.desk.cards.mark;
