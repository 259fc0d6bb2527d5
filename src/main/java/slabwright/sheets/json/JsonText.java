package slabwright.sheets.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import slabwright.shape.Vec;

/** JSON trees as text. */
final class JsonText {
  private static final int DECIMALS = 3;
  private static final double LARGE = 1e6;

  private JsonText() {}

  /** A length in mm or an area in mm² to a thousandth, without exponent or needless zeros. */
  static BigDecimal number(double value) {
    BigDecimal d = BigDecimal.valueOf(value).setScale(DECIMALS, RoundingMode.HALF_UP);
    BigDecimal plain = d.stripTrailingZeros();
    return plain.scale() < 0 ? plain.setScale(0) : plain;
  }

  /** As {@link #number}, and small values to nine significant digits. */
  static BigDecimal significant(double value) {
    if (Math.abs(value) >= LARGE) {
      return number(value);
    }
    BigDecimal d = new BigDecimal(value).round(new MathContext(9)).stripTrailingZeros();
    return d.scale() < 0 ? d.setScale(0) : d;
  }

  static String line(JsonNode node) {
    try {
      return new ObjectMapper().writeValueAsString(node);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  static String pretty(JsonNode node) {
    return node.toPrettyString() + "\n";
  }

  static void place(ObjectNode o, Vec at) {
    o.put("x_mm", number(at.x())).put("y_mm", number(at.y()));
  }
}
