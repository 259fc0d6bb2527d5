package slabwright.store;

import java.util.Optional;
import slabwright.site.Refusal;

/**
 * Brings a plan of an older version to the current one, one step at a time. Version 1 is the first,
 * so there is no step yet; a newer version is refused, never guessed at.
 */
final class PlanUpgrader {
  private PlanUpgrader() {}

  /** Why the plan can't be brought to the current version, if it can't. */
  static Optional<Refusal> toCurrent(JsonValue.Obj plan) {
    JsonValue version = plan.fields().get("version");
    if (version == null) {
      return Optional.of(
          Refusal.at(
              "version",
              "The plan lacks \"version\"; add \"version\": " + SiteCodec.VERSION + "."));
    }
    if (!(version instanceof JsonValue.Num n)) {
      return Optional.of(FieldReader.wrong(version, "a whole number"));
    }
    if (n.value().intValue() > SiteCodec.VERSION) {
      return Optional.of(
          Refusal.at(
              "version",
              "The plan is of version "
                  + n.value().toPlainString()
                  + ", newer than this program's "
                  + SiteCodec.VERSION
                  + "; open it with a newer Slabwright."));
    }
    return n.value().doubleValue() == SiteCodec.VERSION
        ? Optional.empty()
        : Optional.of(
            Refusal.at(
                "version",
                "The plan is of version "
                    + n.value().toPlainString()
                    + ", which never was; the first is 1."));
  }
}
