package slabwright.sheets.page;

import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** What every sheet is made with: the page, how numbers are shown, and the words. */
public record SheetContext(PageFrame page, UnitSystem units, Words words) {
  public SheetContext {
    words = words.inUnits(units);
  }

  public TypeSizes type() {
    return page.type();
  }

  public String say(Message message) {
    return words.say(message);
  }

  /** A sentence or label, as {@link Words#say}. */
  public String say(String key, Object... values) {
    return words.say(key, values);
  }

  public TimeFormat times() {
    return new TimeFormat(words);
  }

  public String length(double mm) {
    return LengthFormat.show(mm, units);
  }

  /** A running length as a bare number; the unit stands in the column's head. */
  String run(double mm) {
    return bare(QuantityFormat.run(mm, units));
  }

  /** An area in whole square feet, or square metres to a tenth: as one speaks of a floor. */
  public String wholeArea(double mm2) {
    return QuantityFormat.wholeArea(mm2, units);
  }

  public String area(double mm2) {
    return QuantityFormat.area(mm2, units);
  }

  /** An area as a bare number; the unit stands in the column's head. */
  public String bareArea(double mm2) {
    return bare(QuantityFormat.area(mm2, units));
  }

  public String areaUnit() {
    return unit(QuantityFormat.area(0, units));
  }

  String runUnit() {
    return unit(QuantityFormat.run(0, units));
  }

  private static String bare(String withUnit) {
    return withUnit.substring(0, withUnit.indexOf(' '));
  }

  private static String unit(String withNumber) {
    return withNumber.substring(withNumber.indexOf(' ') + 1);
  }
}
