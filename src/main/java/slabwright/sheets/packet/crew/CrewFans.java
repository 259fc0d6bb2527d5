package slabwright.sheets.packet.crew;

import java.util.Optional;
import slabwright.sheets.packet.PacketContents;
import slabwright.units.RateFormat;
import slabwright.work.FanShortage;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepType;

/** Beside setting up a fan: that no can is opened with less air than the plan reckons with. */
record CrewFans(PacketContents job) {
  Optional<String> tooFew(StepType type) {
    return job.work()
        .area(type.areaId())
        .filter(a -> type.kind() == StepKind.SET_UP_FAN)
        .flatMap(a -> FanShortage.of(a, job.work()))
        .map(
            f ->
                job.words()
                    .say(
                        "sheets.crew-step.fans-short",
                        RateFormat.airflow(f.asked(), job.site().units()),
                        RateFormat.airflow(f.moved(), job.site().units()),
                        f.more()));
  }
}
