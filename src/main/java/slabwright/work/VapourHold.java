package slabwright.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;
import slabwright.units.UnitSystem;
import slabwright.work.air.BreathingProtection;
import slabwright.work.air.EntryLimit;
import slabwright.work.air.LowestMetre;
import slabwright.work.air.Solvent;
import slabwright.work.air.VapourStep;
import slabwright.work.days.WorkStep;

/**
 * Why a step may not be laid by its own crew, and what frees it.
 *
 * @param airflow m³/min on the plan
 * @param shift minutes of a working day
 */
record VapourHold(
    LowestMetre air,
    double airflow,
    double shift,
    Optional<BreathingProtection> worn,
    UnitSystem units) {

  HeldStep of(WorkStep task, LaidVapour laid, EntryLimit limit) {
    Message why =
        Message.of(
            "work.held.vapour", task.name(), air.added(laid.step()).lel() * 100, word(limit));
    OptionalDouble more = air.airNeeded(laid.step(), worn);
    return new HeldStep(task.type().areaId(), task.id(), why, frees(laid, limit, more), more);
  }

  static Message word(EntryLimit limit) {
    return switch (limit) {
      case TENTH_OF_LEL -> Message.of("work.entry.tenth-of-lel");
      case DANGER -> Message.of("work.entry.danger");
      case PROTECTION_FACTOR -> Message.of("work.entry.protection-factor");
      case FIFTEEN_MINUTES -> Message.of("work.entry.fifteen-minutes");
      case EIGHT_HOURS -> Message.of("work.entry.eight-hours");
    };
  }

  private List<Message> frees(LaidVapour laid, EntryLimit limit, OptionalDouble more) {
    List<Message> ways = new ArrayList<>();
    if (air.isAired()) {
      ways.add(slower(laid));
    }
    more.ifPresent(q -> ways.add(Message.of("work.held.more-air", RateFormat.airflow(q, units))));
    if (air.isAired() && laid.mm2() > 0) {
      sections(laid).ifPresent(ways::add);
    }
    if (worn.isEmpty() && !limit.isForEveryone()) {
      ways.add(Message.of("work.held.protection"));
    }
    ways.add(Message.of("work.held.other-product", solvents(laid.step())));
    return ways;
  }

  private Message slower(LaidVapour laid) {
    double speed = air.bearableSpeed(laid.step(), worn, shift);
    String volume = QuantityFormat.volume(laid.volumeRate() * speed, units);
    return laid.mm2() > 0
        ? Message.of(
            "work.held.slower",
            RateFormat.areaRate(laid.areaRate() * speed, units),
            volume,
            RateFormat.airflow(airflow, units))
        : Message.of("work.held.slower-volume", volume, RateFormat.airflow(airflow, units));
  }

  private Optional<Message> sections(LaidVapour laid) {
    double share = air.bearableShare(laid.step(), worn);
    int times = share > 0 ? air.sharesPerShift(laid.step(), share, worn) : 0;
    return times == 0
        ? Optional.empty()
        : Optional.of(
            Message.of(
                "work.held.sections", QuantityFormat.area(laid.mm2() * share, units), times));
  }

  private static Object solvents(VapourStep step) {
    return Solvent.said(step.liquids().stream().map(l -> l.solvent())).orElse("");
  }
}
