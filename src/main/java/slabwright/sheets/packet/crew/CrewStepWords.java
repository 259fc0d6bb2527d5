package slabwright.sheets.packet.crew;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.panel.Panel;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.settingout.PanelPlace;
import slabwright.inlay.settingout.SettingOut;
import slabwright.inlay.stencil.Stencil;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.TimeFormat;
import slabwright.site.FloorArea;
import slabwright.site.Inlay;
import slabwright.site.Mark;
import slabwright.units.Message;
import slabwright.work.AreaResult;
import slabwright.work.AreaWorkPlan;
import slabwright.work.book.LayingTool;
import slabwright.work.coat.CoatPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.step.StepKind;
import slabwright.work.step.StepMeans;
import slabwright.work.step.StepPlace;
import slabwright.work.step.StepType;

/**
 * What is done in a row of the crew's day, by the kind of its steps.
 *
 * @param timed whether clock times hold; not where the job can't start
 * @param putAway what comes off the floor again, and before which step
 */
record CrewStepWords(PacketContents job, TimeFormat times, boolean timed, CrewPutAway putAway) {
  CrewStepWords(PacketContents job, TimeFormat times, boolean timed) {
    this(job, times, timed, CrewPutAway.of(job.work()));
  }

  /** One sentence. */
  String sentence(CrewDay.Work work) {
    String said = job.words().line(sentence(work, work.first().step()));
    Optional<LocalDateTime> begun = work.first().before();
    if (begun.isEmpty()) {
      return said;
    }
    LocalDateTime left = begun.get();
    return left.toLocalDate().equals(work.span().start().toLocalDate())
        ? job.words().say("sheets.crew-step.goes-on-after-break", said)
        : job.words()
            .say("sheets.crew-step.goes-on-from", said, times.weekday(left, job.work().dated()));
  }

  private Message sentence(CrewDay.Work work, ScheduledStep step) {
    StepType type = step.task().type();
    boolean machine = type.means() == StepMeans.MACHINE;
    String place = place(type);
    String grit = type.subject().grit().orElse("").replace(' ', '\u00a0');
    return switch (type.kind()) {
      case GRIND_TOP -> Message.of("sheets.crew-step.grind-top", place);
      case GRIND_STEPS -> Message.of("sheets.crew-step.grind-steps", place);
      case LEVEL_TRENCH -> Message.of("sheets.crew-step.level-trench", place);
      case FILL_TRENCH -> Message.of("sheets.crew-step.fill-trench", place);
      case TAKE_OFF_RESIDUE ->
          machine
              ? Message.of("sheets.crew-step.residue-machine", place)
              : Message.of("sheets.crew-step.residue-hand", place);
      case METAL_PASS, FINE_PASS ->
          machine
              ? Message.of("sheets.crew-step.grind-field", grit)
              : Message.of("sheets.crew-step.grind-edges", grit);
      case FILL_GAPS -> Message.of("sheets.crew-step.fill-gaps");
      case CLEAN -> Message.of("sheets.crew-step.clean");
      case SAMPLE_PANEL -> Message.of("sheets.crew-step.sample-panel");
      case COAT -> coat(step);
      case DYE_RESIDUE_OFF -> Message.of("sheets.crew-step.residue-off", place);
      case TACK_TEST -> Message.of("sheets.crew-step.tack-test", place);
      case SET_OUT -> Message.of("sheets.crew-step.set-out", place);
      case LAY_STENCIL, PRESS_EDGES, LAY_PAPER -> laying(work, place);
      case MIST_COAT -> mist(work, place);
      case PULL_UP_STENCIL ->
          putAway.isLastStencil(step)
              ? Message.of("sheets.crew-step.pull-up-last", stencil(type), place)
              : Message.of("sheets.crew-step.pull-up", stencil(type), place);
      case ABRADE -> Message.of("sheets.crew-step.abrade", abraded(step));
      case SET_UP -> Message.of("sheets.crew-step.set-up");
      case HEPA_PASS -> Message.of("sheets.crew-step.hepa-pass");
      case SET_UP_FAN -> Message.of("sheets.crew-step.set-up-fan");
      case MASK_WALLS -> new CrewMasking(job).told(type.areaId());
      case STRIKE -> strike();
    };
  }

  /** Nobody packs up over a coat that has just been laid. */
  private Message strike() {
    List<String> wet = job.work().coatedLast();
    return wet.isEmpty()
        ? Message.of("sheets.crew-step.strike")
        : Message.of("sheets.crew-step.strike-outside", String.join(", ", wet));
  }

  /** The mark, inlay or top that is worked on; the floor area where it is the whole floor. */
  private String place(StepType type) {
    Optional<FloorArea> area = job.site().area(type.areaId());
    StepPlace place = type.subject().place();
    if (place instanceof StepPlace.Zone z) {
      return area.flatMap(a -> a.mark(z.markId())).map(Mark::name).orElse(z.markId());
    } else if (place instanceof StepPlace.TopOrStep t) {
      return area.flatMap(a -> a.mark(t.markId())).map(Mark::name).orElse(t.markId());
    } else if (place instanceof StepPlace.Inlay i) {
      return area.flatMap(a -> a.inlay(i.id())).map(Inlay::name).orElse(i.id());
    }
    return job.words().say("sheets.crew-step.whole-floor");
  }

  /** Such as "stencil 2 of 3 (orange)". */
  private Message stencil(StepType type) {
    int place = type.stencils().stream().findFirst().orElse(0);
    List<Stencil> all = inlay(type).map(i -> i.plan().stencils().stencils()).orElse(List.of());
    return place < all.size()
        ? Message.of(
            "sheets.crew-step.stencil",
            place + 1,
            all.size(),
            inlay(type).map(i -> job.words().say(i.colourName(all.get(place).colour()))).orElse(""))
        : Message.of("sheets.crew-step.stencil-alone", place + 1);
  }

  private Optional<PlacedInlay> inlay(StepType type) {
    return type.subject().place() instanceof StepPlace.Inlay place
        ? job.area(type.areaId()).stream()
            .map(AreaResult::inlays)
            .flatMap(List::stream)
            .filter(i -> i.inlay().id().equals(place.id()))
            .findFirst()
        : Optional.empty();
  }

  private Message laying(CrewDay.Work work, String place) {
    Set<StepKind> kinds = EnumSet.noneOf(StepKind.class);
    work.parts().forEach(p -> kinds.add(p.step().task().type().kind()));
    StepType type = work.first().step().task().type();
    Message stencil = stencil(type);
    if (!kinds.contains(StepKind.LAY_STENCIL)) {
      return kinds.contains(StepKind.PRESS_EDGES)
          ? Message.of("sheets.crew-step.press", stencil, place)
          : Message.of("sheets.crew-step.paper", stencil, place);
    }
    String order =
        inlay(type)
            .flatMap(i -> job.area(type.areaId()).flatMap(a -> settingOut(a, i, type)))
            .orElse("");
    return kinds.contains(StepKind.PRESS_EDGES)
        ? Message.of("sheets.crew-step.lay-and-press", stencil, place, order)
        : Message.of("sheets.crew-step.lay", stencil, place, order);
  }

  private boolean isSetOut(StepType type) {
    return job.area(type.areaId())
        .flatMap(a -> inlay(type).flatMap(i -> i.settingOut(a.takeoff(), job.site().units())))
        .isPresent();
  }

  /**
   * The panels in the order of laying, such as "panel B on the cross, then panels C, A": letters
   * stand for people too.
   */
  private Optional<String> settingOut(AreaResult area, PlacedInlay inlay, StepType type) {
    return inlay
        .settingOut(area.takeoff(), job.site().units())
        .map(s -> laid(s, inlay, type).stream().map(PanelPlace::panel).toList())
        .filter(p -> !p.isEmpty())
        .map(
            p ->
                job.words()
                    .say(
                        isLocal(inlay, type)
                            ? toTicks(p)
                            : onCross(p.get(0), p.subList(1, p.size()))));
  }

  private static Message toTicks(List<String> panels) {
    return panels.size() == 1
        ? Message.of("sheets.crew-step.local-panel", panels.get(0))
        : Message.of("sheets.crew-step.local-panels", String.join(", ", panels));
  }

  private static Message onCross(String first, List<String> others) {
    return others.isEmpty()
        ? Message.of("sheets.crew-step.one-panel", first)
        : Message.of("sheets.crew-step.panels", first, String.join(", ", others), others.size());
  }

  /** Those of the stencil's own blanks; else those of the whole blank that are cut for it. */
  private static List<PanelPlace> laid(SettingOut out, PlacedInlay inlay, StepType type) {
    Optional<Stencil> stencil = stencil(inlay, type);
    Optional<PanelPlan> panels = inlay.plan().panels();
    if (stencil.isEmpty() || panels.isEmpty()) {
      return out.panels();
    }
    List<String> cut = panels.get().cut(stencil.get()).stream().map(Panel::name).toList();
    return out.panels().stream().filter(p -> cut.contains(p.panel())).toList();
  }

  private static boolean isLocal(PlacedInlay inlay, StepType type) {
    return stencil(inlay, type)
        .flatMap(s -> inlay.plan().panels().map(p -> p.isLocal(s)))
        .orElse(false);
  }

  private static Optional<Stencil> stencil(PlacedInlay inlay, StepType type) {
    List<Stencil> all = inlay.plan().stencils().stencils();
    return type.stencils().stream().findFirst().filter(i -> i < all.size()).map(all::get);
  }

  private Message mist(CrewDay.Work work, String place) {
    StepType first = work.first().step().task().type();
    int from = first.coat().map(c -> c.number()).orElse(1);
    int to = work.last().step().task().type().coat().map(c -> c.number()).orElse(from);
    long apart = minutesBetween(work);
    return from == to
        ? Message.of("sheets.crew-step.mist-one", from, stencil(first), place)
        : Message.of("sheets.crew-step.mist", from, to, stencil(first), place, apart);
  }

  /** How long each coat waits for the one before it at least; a break between makes it longer. */
  private static long minutesBetween(CrewDay.Work work) {
    return work.parts().stream()
        .skip(1)
        .flatMap(p -> p.step().task().waits().stream())
        .mapToLong(w -> w.atLeast().toMinutes())
        .max()
        .orElse(0);
  }

  private Message coat(ScheduledStep step) {
    StepType type = step.task().type();
    Optional<CoatPlan> plan = plan(type);
    if (plan.isEmpty()) {
      return step.task().name();
    }
    String product = plan.get().product().label();
    int number = type.coat().map(c -> c.number()).orElse(1);
    int all = plan.get().job().coats();
    LayingTool tool = plan.get().product().laying().tool().maybe().orElse(LayingTool.ROLLER);
    return switch (tool) {
      case ROLLER -> Message.of("sheets.crew-step.roll", product, number, all);
      case SPRAYER -> Message.of("sheets.crew-step.spray", product, number, all);
      case BRUSH -> Message.of("sheets.crew-step.brush", product, number, all);
      case PAD -> Message.of("sheets.crew-step.pad", product, number, all);
    };
  }

  Optional<CoatPlan> plan(StepType type) {
    return type.coat()
        .flatMap(
            c ->
                job.work().area(type.areaId()).map(AreaWorkPlan::coats).orElse(List.of()).stream()
                    .filter(p -> p.job().place() == c.place())
                    .findFirst());
  }

  private String abraded(ScheduledStep step) {
    return CrewDays.days(job.work())
        .flatMap(d -> d.step(step.abradesFor()))
        .map(s -> job.words().say(s.task().name()))
        .orElse(step.abradesFor());
  }

  /** Tools, batches and poster, a line each. */
  List<String> details(CrewDay.Work work) {
    List<String> with = new ArrayList<>();
    String tools = new CrewToolNames(job.words()).of(work);
    if (!tools.isEmpty()) {
      with.add(tools);
    }
    poster(work.first().step().task().type()).ifPresent(with::add);
    work.last().after().ifPresent(t -> with.add(pauses(work, t)));
    List<String> lines = new ArrayList<>();
    if (!with.isEmpty()) {
      lines.add(String.join(" · ", with));
    }
    work.parts().stream()
        .map(p -> p.step().task().air().protection())
        .filter(p -> !p.isEmpty())
        .distinct()
        .forEach(p -> lines.add(job.words().say("sheets.crew-step.protection", p)));
    new CrewSpraying(job).worn(work.first().step().task().type()).ifPresent(lines::add);
    lines.addAll(putAway.told(work.first(), timed).stream().map(job.words()::say).toList());
    if (work.first().step().task().type().kind() == StepKind.SAMPLE_PANEL) {
      CrewSample sample = new CrewSample(job, times, timed);
      lines.addAll(sample.told(work.first()));
      sample.dries(work).ifPresent(lines::add);
    }
    new CrewFans(job).tooFew(work.first().step().task().type()).ifPresent(lines::add);
    lines.addAll(amounts(work));
    CrewDays.days(job.work())
        .filter(d -> timed)
        .flatMap(d -> new CrewRest(job, times, d).told(work))
        .ifPresent(lines::add);
    if (work.first().before().isEmpty()) {
      machines(work.first().step().task().type()).ifPresent(lines::add);
    }
    StepType type = work.first().step().task().type();
    job.work()
        .area(type.areaId())
        .flatMap(a -> a.prep().mixing(type.subject()))
        .flatMap(m -> m.told(job.site().units()))
        .ifPresent(m -> lines.add(job.words().say(m)));
    new BegunCartridge(job, times).told(work.first().step()).ifPresent(lines::add);
    return lines;
  }

  /** Of the machines that the plan stores for a floor: the widest first, the others after it. */
  private Optional<String> machines(StepType type) {
    boolean field = type.kind() == StepKind.METAL_PASS || type.kind() == StepKind.FINE_PASS;
    List<String> names =
        job.area(type.areaId()).filter(a -> field && type.isMachineGrinding()).stream()
            .flatMap(a -> a.takeoff().levelled().shares().stream())
            .filter(s -> s.area() > 0)
            .map(s -> new CrewToolNames(job.words()).machine(s.machine().name()))
            .toList();
    return names.size() < 2
        ? Optional.empty()
        : Optional.of(
            job.words()
                .say(
                    "sheets.crew-step.machines",
                    names.get(0),
                    String.join(", ", names.subList(1, names.size()))));
  }

  private List<String> amounts(CrewDay.Work work) {
    StepType type = work.first().step().task().type();
    CrewAmounts amounts = new CrewAmounts(job, times, timed);
    return plan(type)
        .map(
            p ->
                type.kind() == StepKind.COAT
                    ? amounts.coat(work.first(), p)
                    : amounts.mist(work, p))
        .orElse(List.of());
  }

  /** After the break of the day, or on a later one. */
  private String pauses(CrewDay.Work work, LocalDateTime again) {
    return again.toLocalDate().equals(work.span().end().toLocalDate())
        ? job.words().say("sheets.crew-step.pauses-today", times.hour(again))
        : job.words()
            .say("sheets.crew-step.pauses-until", times.weekday(again, job.work().dated()));
  }

  /** On which poster of the packet it is shown. */
  private Optional<String> poster(StepType type) {
    return switch (type.kind()) {
      case FILL_GAPS, TAKE_OFF_RESIDUE ->
          Optional.of(job.words().say("sheets.crew-step.poster-fill"));
      case LEVEL_TRENCH, FILL_TRENCH, METAL_PASS, FINE_PASS ->
          type.means() == StepMeans.HAND
              ? Optional.of(job.words().say("sheets.crew-step.poster-hand-work"))
              : Optional.empty();
      case SET_OUT ->
          isSetOut(type)
              ? Optional.of(job.words().say("sheets.crew-step.poster-set-out"))
              : Optional.empty();
      case LAY_STENCIL, PRESS_EDGES, LAY_PAPER ->
          isSetOut(type)
              ? Optional.of(job.words().say("sheets.crew-step.poster-setting-out"))
              : Optional.empty();
      case COAT ->
          plan(type).filter(p -> new RollingPosters(job).show(type.areaId(), p)).isPresent()
              ? Optional.of(job.words().say("sheets.crew-step.poster-rolling"))
              : Optional.empty();
      case GRIND_TOP,
          GRIND_STEPS,
          CLEAN,
          SAMPLE_PANEL,
          DYE_RESIDUE_OFF,
          TACK_TEST,
          MIST_COAT,
          PULL_UP_STENCIL,
          ABRADE,
          SET_UP,
          HEPA_PASS,
          SET_UP_FAN,
          MASK_WALLS,
          STRIKE ->
          Optional.empty();
    };
  }
}
