package slabwright.sheets.packet.fire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;
import slabwright.sheets.packet.MeterLines;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.CautionBlock;
import slabwright.sheets.page.DenseBlock;
import slabwright.sheets.page.PairBlock;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.SignatureLine;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.site.job.JobCrew;
import slabwright.site.job.Party;
import slabwright.site.job.Stop;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;
import slabwright.work.AirPlan;
import slabwright.work.JobTools;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirScreening;
import slabwright.work.air.ExposureLimit;
import slabwright.work.air.FreshAirNeed;
import slabwright.work.air.LimitComparison;
import slabwright.work.air.Solvent;
import slabwright.work.days.DayPlan;
import slabwright.work.days.ScheduledStep;
import slabwright.work.stop.JobStop;

/** The form for all floors with solvent on them, to be filled, checked and signed at the door. */
final class PermitForm {
  private final PacketContents job;
  private final List<SolventFloor> floors;
  private final SheetContext context;

  PermitForm(PacketContents job, List<SolventFloor> floors, SheetContext context) {
    this.job = job;
    this.floors = floors;
    this.context = context;
  }

  /**
   * @param dense whether what is not the stop box is set in the smallest size
   */
  List<Block> blocks(boolean dense) {
    List<Block> blocks = new ArrayList<>();
    blocks.add(
        CautionBlock.stop(context.say("sheets.permit-form.stop"), String.join(" ", stopNumbers())));
    List<Block> rest = new ArrayList<>();
    rest.add(liquids());
    rest.add(facts());
    floors.forEach(f -> airflow(f).ifPresent(t -> rest.add(new Paragraph(t))));
    rest.add(
        new PairBlock(
            dense ? 0.54 : 0.5, List.of(filled(true, dense)), List.of(filled(false, dense))));
    duties().ifPresent(rest::add);
    rest.addAll(new AfterHours(job, context).blocks());
    rest.add(
        new PairBlock(
            0.5,
            List.of(SignatureLine.of(context.say("sheets.permit-form.contractor"), context)),
            List.of(SignatureLine.of(context.say("sheets.permit-form.inspector"), context))));
    rest.forEach(b -> blocks.add(dense ? new DenseBlock(b) : b));
    return blocks;
  }

  private Block liquids() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (SolventFloor floor : floors) {
      for (SolventUse use : SolventUse.of(floor.work(), job.work())) {
        Solvent worst = use.worst();
        String product =
            context.say("sheets.permit-form.product", use.product().label(), worst.said());
        rows.add(
            List.of(
                TableCell.of(on(floor, product)),
                TableCell.of(liquidClass(worst)),
                TableCell.of(QuantityFormat.temperature(worst.flashCelsius(), context.units())),
                TableCell.of(volume(use.mostADay())),
                TableCell.of(volume(use.total())),
                new TableCell.Tick()));
      }
    }
    return TableBlock.of(
        List.of(
            TableColumn.words(context.say("sheets.permit-form.liquid")),
            TableColumn.narrow(context.say("sheets.permit-form.class")),
            TableColumn.number(context.say("sheets.permit-form.flash")),
            TableColumn.number(context.say("sheets.permit-form.a-day")),
            TableColumn.number(context.say("sheets.permit-form.in-all")),
            TableColumn.narrow(context.say("sheets.permit-form.data-sheet"))),
        rows);
  }

  /**
   * On which days and when solvent is laid, outward to the quarter hour, so that a watch is never
   * too short; empty without days.
   */
  List<Block> times() {
    boolean dated = job.work().dated();
    List<List<TableCell>> rows =
        SolventTimes.of(floors, job.work()).stream()
            .map(
                t ->
                    List.of(
                        TableCell.bold(context.times().day(t.from(), dated)),
                        TableCell.bold(
                            context.say(
                                "sheets.permit-form.from-to",
                                context.times().hourBeforeOfAnyDay(t.from()),
                                context.times().hourOfAnyDay(t.to()))),
                        TableCell.of(
                            context.say("sheets.permit-form.on-floor", t.floor().name(), laid(t))),
                        TableCell.of(
                            t.panel() ? context.say("sheets.permit-form.some") : volume(t.mm3()))))
            .toList();
    List<Block> blocks = new ArrayList<>();
    if (!rows.isEmpty()) {
      blocks.add(
          TableBlock.of(
              List.of(
                  TableColumn.narrow(context.say("sheets.permit-form.day")),
                  TableColumn.narrow(context.say("sheets.permit-form.laid")),
                  TableColumn.words(context.say("sheets.permit-form.where-and-what")),
                  TableColumn.number(context.say("sheets.permit-form.amount"))),
              rows));
      blocks.add(new Paragraph(context.say("sheets.permit-form.then-vapour")));
    }
    return blocks;
  }

  private String laid(SolventTimes t) {
    return t.panel()
        ? context.say("sheets.permit-form.sample-panel", t.product().label())
        : context.say("sheets.permit-form.laid-product", t.product().label());
  }

  /** With the floor's name before it where there are several. */
  private String on(SolventFloor floor, String said) {
    return floors.size() == 1
        ? said
        : context.say("sheets.permit-form.on-floor", floor.work().name(), said);
  }

  private String volume(Optional<Double> mm3) {
    return mm3.map(v -> QuantityFormat.volume(v, context.units()))
        .orElseGet(() -> context.say("sheets.permit-form.blank"));
  }

  private String liquidClass(Solvent s) {
    if (s.isClassOne()) {
      return context.say("sheets.permit-form.class-one");
    }
    return s.isClassTwo()
        ? context.say("sheets.permit-form.class-two")
        : context.say("sheets.permit-form.other-class");
  }

  private List<String> stopNumbers() {
    List<String> lines = new ArrayList<>();
    lines.add(context.say("sheets.permit-form.stop-lel"));
    for (SolventFloor floor : floors) {
      for (SolventUse use : SolventUse.of(floor.work(), job.work())) {
        Solvent s = use.worst();
        s.strictest(ExposureLimit.AveragingPeriod.FIFTEEN_MINUTES)
            .map(l -> context.say("sheets.permit-form.stop-ppm", s.said(), l.share() * 1e6))
            .ifPresent(lines::add);
      }
    }
    for (SolventFloor floor : floors) {
      floor.air().screening().ifPresent(s -> lines.add(on(floor, expected(s))));
      closed(floor).forEach(c -> lines.add(on(floor, c)));
    }
    return lines.stream().distinct().toList();
  }

  private String expected(AirScreening screening) {
    AirFigures air = screening.stated().orElse(screening.closed());
    double low = air.layerPeakLel();
    return low >= AirFigures.HAZARDOUS_SHARE
        ? context.say("sheets.permit-form.expected-over", low * 100, air.peakStep())
        : context.say("sheets.permit-form.expected-under", low * 100);
  }

  private List<String> closed(SolventFloor floor) {
    return job.work().outlook().closed().stream()
        .filter(c -> c.area().equals(floor.work().id()))
        .flatMap(c -> c.span().stream())
        .map(
            s ->
                context.say(
                    "sheets.permit-form.closed",
                    context.times().moment(s.start(), job.work().dated()),
                    context.times().moment(s.end(), job.work().dated())))
        .toList();
  }

  /** What is known of permit, code and air: a column for each floor where there is room. */
  private Block facts() {
    boolean apart = floors.size() == 2;
    List<List<TableCell>> rows = new ArrayList<>();
    List<TableColumn> columns = new ArrayList<>();
    columns.add(TableColumn.narrow(""));
    if (apart) {
      floors.forEach(f -> columns.add(TableColumn.words(f.work().name())));
    } else {
      columns.add(TableColumn.words(""));
    }
    rows.add(each(apart, context.say("sheets.permit-form.permit"), this::permit));
    rows.add(each(apart, context.say("sheets.permit-form.code"), this::code));
    return TableBlock.of(columns, rows);
  }

  private List<TableCell> each(boolean apart, String what, Function<SolventFloor, String> value) {
    List<TableCell> row = new ArrayList<>(List.of(TableCell.of(what)));
    if (apart) {
      floors.forEach(f -> row.add(TableCell.bold(value.apply(f))));
    } else if (floors.stream().map(value).distinct().count() == 1) {
      row.add(TableCell.bold(value.apply(floors.get(0))));
    } else {
      row.add(
          TableCell.bold(
              floors.stream().map(f -> on(f, value.apply(f))).collect(Collectors.joining(". "))));
    }
    return row;
  }

  /**
   * Who reads the meter while the solvent is out, and when detectors are off for dust; who stands
   * at the door and who calls is filled.
   */
  private Optional<Block> duties() {
    MeterLines meter = new MeterLines(job);
    List<ScheduledStep> steps =
        MeterLines.dayPlan(job.work()).map(DayPlan::steps).orElse(List.of()).stream()
            .filter(s -> floors.stream().anyMatch(f -> s.task().type().isOn(f.work().id())))
            .toList();
    List<String> lines = meter.readers(steps);
    List<String> said = new ArrayList<>();
    if (!lines.isEmpty()) {
      said.add(context.say("sheets.permit-form.duties", String.join(" ", lines)));
    }
    // in one paragraph: the form is to stay one page
    new DetectorsOff(job, context).said().ifPresent(said::add);
    return said.isEmpty() ? Optional.empty() : Optional.of(new Paragraph(String.join(" ", said)));
  }

  /** What is written in at the door: who on one side, tools and duties on the other. */
  private Block filled(boolean people, boolean dense) {
    String blank = context.say("sheets.permit-form.blank");
    List<List<TableCell>> rows = new ArrayList<>();
    if (people) {
      row(rows, context.say("sheets.permit-form.lead"), lead());
      row(
          rows,
          context.say("sheets.permit-form.contractor-phone"),
          party(job.site().job().contractor()));
      row(rows, context.say("sheets.permit-form.client-phone"), party(job.site().job().client()));
      row(rows, context.say("sheets.permit-form.fire-department"), blank);
      row(rows, context.say("sheets.permit-form.calls"), blank);
    } else {
      row(rows, context.say("sheets.permit-form.fan"), blank);
      row(rows, context.say("sheets.permit-form.meter"), blank);
      row(rows, context.say("sheets.permit-form.off-by"), blank);
      row(rows, context.say("sheets.permit-form.at-door"), blank);
      row(rows, context.say("sheets.permit-form.watch"), blank);
    }
    if (dense) {
      // bold words are wider: a name would take a second line
      rows.replaceAll(r -> List.of(r.get(0), plain(r.get(1))));
    }
    return TableBlock.of(List.of(TableColumn.narrow(""), TableColumn.words("")), rows);
  }

  private static TableCell plain(TableCell cell) {
    return cell instanceof TableCell.Words w ? TableCell.of(w.words()) : cell;
  }

  private static void row(List<List<TableCell>> rows, String what, String value) {
    rows.add(List.of(TableCell.of(what), TableCell.bold(value)));
  }

  private String permit(SolventFloor floor) {
    Optional<JobStop> stop =
        floor.work().stops().stream().filter(s -> s.kind() == Stop.Kind.FIRE_PERMIT).findFirst();
    return stop.map(s -> context.say(s.isOpen() ? open() : s.standing()))
        .orElseGet(() -> context.say("sheets.permit-form.no-permit-asked"));
  }

  private static Message open() {
    return Message.of("sheets.permit-form.permit-open");
  }

  private String code(SolventFloor floor) {
    AirPlan air = floor.air();
    return air.fire().applies()
        ? air.fire().reasons().stream().map(context::say).reduce((a, b) -> a + "; " + b).orElse("")
        : context.say("sheets.permit-form.code-does-not-apply");
  }

  /** Across the page: what is said of one floor outdoors is nothing. */
  private Optional<String> airflow(SolventFloor floor) {
    return floor
        .air()
        .screening()
        .map(air -> context.say("sheets.permit-form.airflow-is", on(floor, airflow(floor, air))));
  }

  private String airflow(SolventFloor floor, AirScreening air) {
    List<String> said = new ArrayList<>();
    said.add(
        air.stated()
            .map(
                f ->
                    context.say(
                        "sheets.permit-form.air", RateFormat.airflow(f.airflow(), context.units())))
            .orElseGet(() -> context.say("sheets.permit-form.no-air")));
    air.stated().flatMap(this::fan).ifPresent(said::add);
    said.add(need(air));
    freeingAir(floor).ifPresent(said::add);
    said.add(breathed(air.stated().orElse(air.closed())));
    return String.join("; ", said);
  }

  /** Where the fans of the job move less than the plan reckons with. */
  private Optional<String> fan(AirFigures stated) {
    OptionalDouble fans = JobTools.fansBelow(stated.airflow(), job.work());
    return fans.isPresent()
        ? Optional.of(
            context.say(
                "sheets.permit-form.fan-short",
                RateFormat.airflow(fans.getAsDouble(), context.units())))
        : Optional.empty();
  }

  /** What fire asks for, the more of two rules; what is breathed has a verdict of its own. */
  private String need(AirScreening air) {
    FreshAirNeed need = air.need();
    return need.layerFire() > need.byFloor()
        ? context.say(
            "sheets.permit-form.need-fire", RateFormat.airflow(need.layerFire(), context.units()))
        : context.say(
            "sheets.permit-form.need-floor", RateFormat.airflow(need.byFloor(), context.units()));
  }

  /** What lets held steps go on as they are planned: far more than a mean by fire rules. */
  private Optional<String> freeingAir(SolventFloor floor) {
    OptionalDouble air = job.work().outlook().freeingAir(floor.work().id());
    return air.isPresent()
        ? Optional.of(
            context.say(
                "sheets.permit-form.need-held",
                RateFormat.airflow(air.getAsDouble(), context.units())))
        : Optional.empty();
  }

  /** Whether any limit of any span is passed below the waist, or all solvents together pass one. */
  private String breathed(AirFigures air) {
    boolean passed =
        air.layerTogether() > 1 || air.limits().stream().anyMatch(LimitComparison::isPassed);
    return passed
        ? context.say("sheets.permit-form.limits-passed")
        : context.say("sheets.permit-form.limits-kept");
  }

  private String lead() {
    return job.site().job().crew().persons().stream()
        .map(JobCrew.Person::name)
        .filter(n -> !n.isBlank())
        .findFirst()
        .orElseGet(() -> context.say("sheets.permit-form.blank"));
  }

  private String party(Party p) {
    String name = p.name().isBlank() ? p.contact() : p.name();
    // a phone number is never parted over two lines
    String said = (name + " " + p.phone().replace(' ', '\u00a0')).strip();
    return said.isEmpty() ? context.say("sheets.permit-form.blank") : said;
  }
}
