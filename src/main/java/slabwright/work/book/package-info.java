/**
 * The shop book: the contractor's own rates, coverages, times, machines, crew and prices, read from
 * one commented text file. What the file does not say is a value of its own kind, never a guess.
 *
 * <p>{@link ShopBookFile} (entry: finds it) and {@link ShopBook} (entry: what it says); then {@link
 * Product} with {@link ProductKind}, {@link ProductCoverage}, {@link Mixing}, {@link Laying},
 * {@link Drying}, {@link ProductSuitability} and {@link Kit}; {@link ShopTool}, {@link LayingTool},
 * {@link GritRate}, {@link PrepRates}, {@link InlayRates}, {@link Crew}, {@link SetUpTimes}, {@link
 * ConsumablePrices}, {@link FastestRate}, {@link TemperatureTable}; a {@link Figure} is a number
 * with where it came from, {@link RateArithmetic} uses it. {@link ExampleBook} is the invented one.
 *
 * <p>Reading: {@link ShopBookText}, {@link ShopBookReader}, {@link BookSection}, {@link
 * BookValueReader}, {@link BookDimension}, {@link SolventReader}, {@link TemperatureTableReader}; a
 * {@link BookFault} has its line. {@link BookForm} and {@link BookField} let the desk change it.
 */
package slabwright.work.book;
