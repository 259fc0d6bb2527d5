package slabwright.store;

import java.math.BigDecimal;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.UnaryOperator;
import slabwright.units.Message;
import slabwright.units.Refusal;

/**
 * Brings a plan of an older version to the current one, one step at a time. A newer version is
 * refused, never guessed at.
 */
final class PlanUpgrader {
  /** Step {@code i} takes a plan of version {@code i + 1} to the next. */
  private static final List<UnaryOperator<JsonValue.Obj>> STEPS = List.of(PlanUpgrader::oneToTwo);

  private PlanUpgrader() {}

  /** Why the plan can't be brought to the current version, if it can't. */
  static Optional<Refusal> refusal(JsonValue.Obj plan) {
    JsonValue version = plan.fields().get("version");
    if (version == null) {
      return Optional.of(
          Refusal.at(
              "version",
              Message.of("store.plan-upgrader.the-plan-lacks-version-add", SiteCodec.VERSION)));
    }
    if (!(version instanceof JsonValue.Num n)) {
      return Optional.of(
          FieldReader.wrong(version, Message.of("store.field-reader.a-whole-number")));
    }
    BigDecimal number = n.value();
    if (number.compareTo(BigDecimal.valueOf(SiteCodec.VERSION)) > 0) {
      return Optional.of(
          Refusal.at(
              "version",
              Message.of(
                  "store.plan-upgrader.the-plan-is-of-version",
                  number.toPlainString(),
                  SiteCodec.VERSION)));
    }
    boolean known = number.signum() > 0 && number.stripTrailingZeros().scale() <= 0;
    return known
        ? Optional.empty()
        : Optional.of(
            Refusal.at(
                "version",
                Message.of(
                    "store.plan-upgrader.the-plan-is-of-version-2", number.toPlainString())));
  }

  /** The plan in the current version; it must be one that is not refused. */
  static JsonValue.Obj toCurrent(JsonValue.Obj plan) {
    JsonValue.Obj now = plan;
    while (version(now) < SiteCodec.VERSION) {
      now = STEPS.get(version(now) - 1).apply(now);
    }
    return now;
  }

  private static int version(JsonValue.Obj plan) {
    return plan.fields().get("version") instanceof JsonValue.Num n ? n.value().intValue() : 0;
  }

  /** Version 2 adds fields that may all be absent, so that what version 1 says stays as it is. */
  private static JsonValue.Obj oneToTwo(JsonValue.Obj plan) {
    return numbered(plan, 2);
  }

  private static JsonValue.Obj numbered(JsonValue.Obj plan, int version) {
    Map<String, JsonValue> fields = new LinkedHashMap<>(plan.fields());
    JsonValue.Place place = fields.get("version").place();
    fields.put("version", new JsonValue.Num(BigDecimal.valueOf(version), place));
    return new JsonValue.Obj(fields, plan.place());
  }
}
