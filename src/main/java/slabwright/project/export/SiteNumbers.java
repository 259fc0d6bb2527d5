package slabwright.project.export;

import slabwright.inlay.PlacedInlay;
import slabwright.project.SiteResult;
import slabwright.sheets.csv.QuantitiesCsv;
import slabwright.sheets.json.InlayJson;
import slabwright.sheets.json.TallyJson;
import slabwright.sheets.json.WorkJson;
import slabwright.work.AreaResult;

/** The numbers of a computed site as texts, the same for every door. */
record SiteNumbers(SiteResult result) {
  /** Areas, edges, machine and hand work: JSON. */
  String tally() {
    return TallyJson.write(result.site(), result.areas().stream().map(AreaResult::ways).toList());
  }

  /** Passes, coats, air and days: JSON. */
  String work() {
    return WorkJson.write(result.work());
  }

  /** The quantities as a table: CSV. */
  String quantities() {
    return QuantitiesCsv.write(result.areas());
  }

  /** One inlay: JSON. */
  static String inlay(PlacedInlay i) {
    return InlayJson.pretty(i.inlay().graphic(), i.artwork(), i.plan(), i.inlay().spec());
  }
}
