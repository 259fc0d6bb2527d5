/**
 * The card engine: a column of cards beside the slab, and the rows they are made of.
 *
 * <p>{@link CardColumn} (entry) shows each {@link Card} with its {@link CardHead}, folded as {@link
 * CardFolding} says. To write a card begin at {@link FieldRows} (entry), which makes rows of {@link
 * LengthField} and of numbers in a {@link NumberRange}. {@link FindingRow} is a sentence with a way
 * to its place, by {@link PlaceNavigator} and {@link PlaceCycle}; {@link HintCard}, {@link
 * LookHereCard}, {@link TypedDateTime}, {@link PapersCard}, {@link ComputingRow} and {@link
 * PictureRow} are the rest.
 */
package slabwright.desk.cards;
