package slabwright.sheets.packet.crew;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.TimeFormat;
import slabwright.site.Doorway;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;
import slabwright.work.AreaWorkPlan;
import slabwright.work.InlayTakeoff;
import slabwright.work.book.Product;
import slabwright.work.book.ProductKind;
import slabwright.work.coat.BatchLanes;
import slabwright.work.coat.Batches;
import slabwright.work.coat.CoatPlan;
import slabwright.work.coat.DividedCoat;
import slabwright.work.days.WorkStep;
import slabwright.work.step.StepPlace;
import slabwright.work.step.StepType;
import slabwright.work.step.ToolKind;

/**
 * How much of what a row of the crew's day lays, the usual loss included, as it is bought.
 *
 * @param timed whether clock times hold; not where the job can't start
 */
record CrewAmounts(PacketContents job, TimeFormat times, boolean timed) {

  /** Of a coat: the amount, the grit in the last one, and when each batch goes onto the floor. */
  List<String> coat(CrewDay.Part part, CoatPlan plan) {
    Optional<DividedCoat.Section> section = section(plan, part.step().task());
    CoatPlan laid = section.map(DividedCoat.Section::plan).orElse(plan);
    List<String> lines = new ArrayList<>();
    lines.add(
        job.words()
            .say(
                section.isPresent()
                    ? Message.of("sheets.crew-amounts.section", laid.volume().text(this::volume))
                    : Message.of("sheets.crew-amounts.coat", laid.volume().text(this::volume))));
    Optional<Double> grit = grit(part.step().task().type(), plan);
    grit.flatMap(g -> laid.grit().maybe().map(all -> grit(g, all)))
        .ifPresent(g -> lines.add(job.words().say(g)));
    StepType type = part.step().task().type();
    boolean rolled = plan.lanes().maybe().flatMap(l -> l).isPresent();
    if (type.tools().contains(ToolKind.SPRAYER) || (rolled && !isShown(type, plan))) {
      lines.add(job.words().say(route(type)));
    }
    lines.addAll(batches(part, plan, section, grit));
    return lines;
  }

  /** Whether its lanes hang on the wall; else no row tells their numbers. */
  private boolean isShown(StepType type, CoatPlan plan) {
    return new RollingPosters(job).show(type.areaId(), plan);
  }

  /**
   * What has no lanes of its own on a poster, as a sprayed floor: where to begin, and by which door
   * one comes out.
   */
  private Message route(StepType type) {
    String out =
        job.site().area(type.areaId()).stream()
            .flatMap(a -> a.doorways().stream())
            .min(Comparator.comparing(d -> !d.wayIn()))
            .map(Doorway::name)
            .orElseGet(() -> job.words().say("sheets.crew-amounts.way-out"));
    return job.work().area(type.areaId()).stream()
        .flatMap(a -> new RollingPosters(job).coats(a).stream())
        .findFirst()
        .map(c -> Message.of("sheets.crew-amounts.spray-by-lanes", out, c.product().shortLabel()))
        .orElseGet(() -> Message.of("sheets.crew-amounts.spray", out));
  }

  /** Of mist coats through one stencil: whose dye, for each coat and for all in this row. */
  List<String> mist(CrewDay.Work work, CoatPlan plan) {
    StepType type = work.first().step().task().type();
    return dye(type)
        .map(d -> List.of(job.words().say(mist(d, plan, work.parts().size()))))
        .orElse(List.of());
  }

  private Message mist(InlayTakeoff.StencilDye dye, CoatPlan plan, int coats) {
    double share = plan.job().mm2() > 0 ? dye.openings() / plan.job().mm2() : 0;
    String label = plan.product().label();
    Message each = plan.volume().text(v -> volume(v * share));
    return coats == 1
        ? Message.of("sheets.crew-amounts.mist-one", label, dye.name(), each)
        : Message.of(
            "sheets.crew-amounts.mist",
            label,
            dye.name(),
            each,
            plan.volume().text(v -> volume(v * share * coats)));
  }

  private Optional<InlayTakeoff.StencilDye> dye(StepType type) {
    int stencil = type.stencils().stream().findFirst().orElse(0);
    return type.subject().place() instanceof StepPlace.Inlay place
        ? job.work().area(type.areaId()).stream()
            .map(AreaWorkPlan::floor)
            .flatMap(f -> f.inlays().stream())
            .filter(i -> i.id().equals(place.id()) && stencil < i.dyes().size())
            .map(i -> i.dyes().get(stencil))
            .findFirst()
        : Optional.empty();
  }

  /** Kilograms to a mm³ where this is the coat that it goes into. */
  private static Optional<Double> grit(StepType type, CoatPlan plan) {
    boolean last = type.coat().filter(c -> c.number() == plan.job().coats()).isPresent();
    return plan.product().spread().gritPerVolume().maybe().filter(g -> last && g > 0);
  }

  private Message grit(double perVolume, double all) {
    String name =
        job.work()
            .book()
            .first(ProductKind.GRIT_ADDITIVE)
            .map(Product::label)
            .orElseGet(() -> job.words().say("sheets.crew-amounts.grit-additive"));
    double unit =
        switch (job.site().units()) {
          case FEET_INCHES -> QuantityFormat.US_GALLON_MM3;
          case METRIC -> QuantityFormat.LITRE_MM3;
        };
    Message each =
        switch (job.site().units()) {
          case FEET_INCHES ->
              Message.of("sheets.crew-amounts.to-each-gallon", weight(perVolume * unit));
          case METRIC -> Message.of("sheets.crew-amounts.to-each-litre", weight(perVolume * unit));
        };
    return Message.of("sheets.crew-amounts.grit", name, each, weight(all));
  }

  /** When each batch goes onto the floor; from the coat's start, cut-in and the first mix first. */
  private List<String> batches(
      CrewDay.Part part,
      CoatPlan plan,
      Optional<DividedCoat.Section> section,
      Optional<Double> grit) {
    List<String> lines = new ArrayList<>();
    // While nobody knows how long the edge stays wet, nobody runs ahead of the roller.
    boolean asYouGo = plan.cutInOutlastsWetEdge().maybe().orElse(true);
    if (plan.lanes().maybe().flatMap(l -> l).isPresent()) {
      lines.add(
          asYouGo
              ? job.words().say("sheets.crew-step.cut-in-as-you-go")
              : job.words().say("sheets.crew-step.cut-in-first"));
    }
    Duration first =
        section.map(DividedCoat.Section::plan).orElse(plan).cutIn().maybe().orElse(Duration.ZERO);
    boolean shown = isShown(part.step().task().type(), plan);
    Duration mixing = plan.product().mixing().mixingTime().maybe().orElse(Duration.ZERO);
    LocalDateTime rolls = part.span().start().plus(asYouGo ? Duration.ZERO : first).plus(mixing);
    for (BatchLanes b : section.map(plan::batchLanes).orElseGet(plan::batchLanes)) {
      String at = times.hourToFiveMinutes(rolls.plus(b.begins()));
      Message when =
          timed
              ? shown
                  ? Message.of("sheets.crew-step.batch", b.batch(), at, b.from(), b.to())
                  : Message.of("sheets.crew-step.batch-at", b.batch(), at)
              : shown
                  ? Message.of("sheets.crew-step.batch-lanes", b.batch(), b.from(), b.to())
                  : Message.of("sheets.crew-step.batch-alone", b.batch());
      lines.add(
          job.words().say(batch(plan, b.batch()).map(x -> mixed(when, x, grit)).orElse(when)));
    }
    return lines;
  }

  private static Optional<Batches.Batch> batch(CoatPlan plan, int number) {
    return plan.mixed().stream()
        .flatMap(b -> b.list().stream())
        .filter(b -> b.number() == number)
        .findFirst();
  }

  /** What is mixed for it; how much of it is laid where some is left over. */
  private Message mixed(Message when, Batches.Batch b, Optional<Double> grit) {
    String mixed = volume(b.mixed());
    String used = volume(b.used());
    Message mix =
        mixed.equals(used)
            ? Message.of("sheets.crew-amounts.mix", when, mixed)
            : Message.of("sheets.crew-amounts.mix-left", when, mixed, used);
    return grit.map(g -> Message.of("sheets.crew-amounts.mix-grit", mix, weight(g * b.mixed())))
        .orElse(mix);
  }

  /** The section that a step lays of a divided coat. */
  private static Optional<DividedCoat.Section> section(CoatPlan plan, WorkStep step) {
    int coat = step.type().coat().map(c -> c.number()).orElse(1);
    return plan.divided().stream()
        .flatMap(d -> d.sections().stream())
        .filter(s -> step.id().equals(step.type().areaId() + "/" + plan.stepId(coat, s)))
        .findFirst();
  }

  private String volume(double mm3) {
    return QuantityFormat.volume(mm3, job.site().units()).replace(' ', '\u00a0');
  }

  private String weight(double kg) {
    return RateFormat.weighed(kg, job.site().units()).replace(' ', '\u00a0');
  }
}
