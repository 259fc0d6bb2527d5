package slabwright.project.export;

import slabwright.inlay.PlacedInlay;
import slabwright.project.SiteResult;
import slabwright.sheets.csv.BuyCsv;
import slabwright.sheets.csv.QuantitiesCsv;
import slabwright.sheets.csv.TakeoffCsv;
import slabwright.sheets.json.InlayJson;
import slabwright.sheets.json.TallyJson;
import slabwright.sheets.json.WorkJson;
import slabwright.words.Words;
import slabwright.work.AreaResult;

/**
 * The numbers of a computed site as texts, the same for every door: JSON in English in every
 * language, as programs read it, the tables in the reader's words.
 */
record SiteNumbers(SiteResult result, Words words) {
  private static final Words JSON = Words.english();

  /** Areas, edges, machine and hand work: JSON. */
  String tally() {
    return TallyJson.write(
        result.site(), result.areas().stream().map(AreaResult::ways).toList(), JSON);
  }

  /** Passes, coats, air and days: JSON. */
  String work() {
    return WorkJson.write(result.work(), JSON);
  }

  /** The quantities as a table: CSV. */
  String quantities() {
    return QuantitiesCsv.write(result.areas(), words);
  }

  /** One inlay on its floor: JSON. */
  String inlay(AreaResult area, PlacedInlay i) {
    return InlayJson.placed(i, area.takeoff(), result.site().units(), JSON);
  }

  /** The take-off in the plan's units, with names: CSV. */
  String takeoff() {
    return TakeoffCsv.write(result.areas(), result.site().units(), words);
  }

  /** What is bought, at what price and by when: CSV. */
  String buying() {
    return BuyCsv.write(result.work(), words);
  }
}
