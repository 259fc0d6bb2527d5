package slabwright.sheets.csv;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;
import slabwright.work.WorkPlan;
import slabwright.work.coat.Kits;
import slabwright.work.handover.BuyLine;
import slabwright.work.handover.OrderLine;
import slabwright.work.handover.SupplyLine;

/**
 * What is bought, as a table for a spreadsheet: a line for each product and colour, then what is
 * used up.
 */
public final class BuyCsv {
  private BuyCsv() {}

  /**
   * Volumes in the plan's units; what is not known is an empty field, its reason stands in place of
   * the kits.
   */
  public static String write(WorkPlan plan, Words words) {
    UnitSystem units = plan.site().units();
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            words.say("sheets.buy-csv.product"),
            words.say("sheets.buy-csv.colour"),
            words.say("sheets.buy-csv.needed"),
            words.say("sheets.buy-csv.unit"),
            words.say("sheets.buy-csv.kits"),
            words.say("sheets.buy-csv.price"),
            words.say("sheets.buy-csv.currency"),
            words.say("sheets.buy-csv.by-when")));
    for (OrderLine o : OrderLine.of(plan)) {
      BuyLine buy = o.buy();
      rows.add(
          List.of(
              buy.label(),
              buy.colour().map(words::say).orElse(""),
              buy.kits().maybe().map(k -> needed(k, units)).orElse(""),
              buy.kits().maybe().map(k -> units == UnitSystem.METRIC ? "L" : "gal").orElse(""),
              // a spreadsheet looks for plain spaces
              words.say(buy.kits().text(k -> k.said(units))).replace('\u00a0', ' '),
              buy.kits().flatMap(Kits::price).maybe().map(BigDecimal::toPlainString).orElse(""),
              plan.book().currency(),
              o.neededOn().map(Object::toString).orElse("")));
    }
    for (SupplyLine s : SupplyLine.of(plan)) {
      rows.add(
          List.of(
              words.say(s.what()).replace('\u00a0', ' '),
              "",
              s.number().maybe().map(BigDecimal::toPlainString).orElse(""),
              s.unit().map(words::say).orElse(""),
              words.say(s.amount().text(m -> m)).replace('\u00a0', ' '),
              s.price().maybe().map(BigDecimal::toPlainString).orElse(""),
              plan.book().currency(),
              s.neededOn().map(Object::toString).orElse("")));
    }
    return Csv.write(rows);
  }

  private static String needed(Kits kits, UnitSystem units) {
    double one =
        units == UnitSystem.METRIC ? QuantityFormat.LITRE_MM3 : QuantityFormat.US_GALLON_MM3;
    return BigDecimal.valueOf(kits.needed() / one)
        .setScale(3, RoundingMode.HALF_UP)
        .toPlainString();
  }
}
