package slabwright.sheets;

import slabwright.units.LengthFormat;
import slabwright.units.Quantity;
import slabwright.units.UnitSystem;

/** What every sheet is made with: the page, and how numbers are shown. */
record SheetContext(PageFrame page, UnitSystem units) {
  Type type() {
    return page.type();
  }

  String length(double mm) {
    return LengthFormat.show(mm, units);
  }

  /** A running length as a bare number; the unit stands in the column's head. */
  String run(double mm) {
    return bare(Quantity.run(mm, units));
  }

  String area(double mm2) {
    return Quantity.area(mm2, units);
  }

  /** An area as a bare number; the unit stands in the column's head. */
  String bareArea(double mm2) {
    return bare(Quantity.area(mm2, units));
  }

  String areaUnit() {
    return units == UnitSystem.METRIC ? "m²" : "sq ft";
  }

  String runUnit() {
    return units == UnitSystem.METRIC ? "m" : "ft";
  }

  private static String bare(String withUnit) {
    return withUnit.substring(0, withUnit.indexOf(' '));
  }
}
