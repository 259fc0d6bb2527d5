package slabwright.sheets.packet.fire;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.BulletBlock;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.PairBlock;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.page.SignatureLine;
import slabwright.sheets.page.TableBlock;
import slabwright.sheets.page.TableCell;
import slabwright.sheets.page.TableColumn;
import slabwright.site.job.JobCrew;
import slabwright.site.job.Party;
import slabwright.site.job.Stop;
import slabwright.units.QuantityFormat;
import slabwright.units.RateFormat;
import slabwright.work.AirPlan;
import slabwright.work.AreaWorkPlan;
import slabwright.work.ClosedAir;
import slabwright.work.air.AirFigures;
import slabwright.work.air.AirScreening;
import slabwright.work.air.ExposureLimit;
import slabwright.work.air.Solvent;
import slabwright.work.stop.JobStop;

/** The form for one floor with solvent on it, to be filled, checked and signed at the door. */
final class PermitForm {
  private final PacketContents job;
  private final AreaWorkPlan area;
  private final AirPlan air;
  private final SheetContext context;

  PermitForm(PacketContents job, AreaWorkPlan area, AirPlan air, SheetContext context) {
    this.job = job;
    this.area = area;
    this.air = air;
    this.context = context;
  }

  List<Block> blocks() {
    List<Block> blocks = new ArrayList<>();
    blocks.add(new Heading(context.say("sheets.permit-form.liquids")));
    blocks.add(liquids());
    blocks.add(new Heading(context.say("sheets.permit-form.stop")));
    blocks.add(new BulletBlock(stopNumbers()));
    blocks.add(new Heading(context.say("sheets.permit-form.facts")));
    blocks.add(facts());
    blocks.add(
        new PairBlock(
            0.5,
            List.of(SignatureLine.of(context.say("sheets.permit-form.contractor"), context)),
            List.of(SignatureLine.of(context.say("sheets.permit-form.inspector"), context))));
    return blocks;
  }

  private Block liquids() {
    List<List<TableCell>> rows = new ArrayList<>();
    for (SolventUse use : SolventUse.of(area, job.work())) {
      Solvent worst = use.worst();
      rows.add(
          List.of(
              TableCell.of(
                  context.say("sheets.permit-form.product", use.product().label(), worst.name())),
              TableCell.of(liquidClass(worst)),
              TableCell.of(QuantityFormat.temperature(worst.flashCelsius(), context.units())),
              TableCell.of(volume(use.mostADay())),
              TableCell.of(volume(use.total())),
              new TableCell.Tick()));
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
    for (SolventUse use : SolventUse.of(area, job.work())) {
      Solvent s = use.worst();
      s.strictest(ExposureLimit.AveragingPeriod.FIFTEEN_MINUTES)
          .ifPresent(
              l ->
                  lines.add(context.say("sheets.permit-form.stop-ppm", s.name(), l.share() * 1e6)));
    }
    air.screening()
        .ifPresent(
            s -> {
              AirFigures f = s.stated().orElse(s.closed());
              double low = f.layerPeakLel();
              lines.add(
                  low >= AirFigures.HAZARDOUS_SHARE
                      ? context.say("sheets.permit-form.expected-over", low * 100)
                      : context.say("sheets.permit-form.expected-under", low * 100));
            });
    for (ClosedAir c : job.work().outlook().closed()) {
      if (c.area().equals(area.id())) {
        c.span()
            .ifPresent(
                s ->
                    lines.add(
                        context.say(
                            "sheets.permit-form.closed",
                            context.times().moment(s.start(), job.work().dated()),
                            context.times().moment(s.end(), job.work().dated()))));
      }
    }
    return lines.stream().distinct().toList();
  }

  private Block facts() {
    List<List<TableCell>> rows = new ArrayList<>();
    row(rows, context.say("sheets.permit-form.permit"), permit());
    row(rows, context.say("sheets.permit-form.code"), code());
    row(rows, context.say("sheets.permit-form.airflow"), airflow());
    row(rows, context.say("sheets.permit-form.fan"), context.say("sheets.permit-form.blank"));
    row(rows, context.say("sheets.permit-form.meter"), context.say("sheets.permit-form.blank"));
    row(rows, context.say("sheets.permit-form.off-by"), context.say("sheets.permit-form.blank"));
    row(rows, context.say("sheets.permit-form.watch"), context.say("sheets.permit-form.blank"));
    row(rows, context.say("sheets.permit-form.lead"), lead());
    row(
        rows,
        context.say("sheets.permit-form.contractor-phone"),
        party(job.site().job().contractor()));
    row(rows, context.say("sheets.permit-form.client-phone"), party(job.site().job().client()));
    row(
        rows,
        context.say("sheets.permit-form.fire-department"),
        context.say("sheets.permit-form.blank"));
    return TableBlock.of(List.of(TableColumn.narrow(""), TableColumn.words("")), rows);
  }

  private static void row(List<List<TableCell>> rows, String what, String value) {
    rows.add(List.of(TableCell.of(what), TableCell.bold(value)));
  }

  private String permit() {
    Optional<JobStop> stop =
        area.stops().stream().filter(s -> s.kind() == Stop.Kind.FIRE_PERMIT).findFirst();
    return stop.map(s -> context.say(s.isOpen() ? open() : s.standing()))
        .orElseGet(() -> context.say("sheets.permit-form.no-permit-asked"));
  }

  private static slabwright.units.Message open() {
    return slabwright.units.Message.of("sheets.permit-form.permit-open");
  }

  private String code() {
    return air.fire().applies()
        ? air.fire().reasons().stream().map(context::say).reduce((a, b) -> a + "; " + b).orElse("")
        : context.say("sheets.permit-form.code-does-not-apply");
  }

  private String airflow() {
    Optional<AirScreening> screening = air.screening();
    if (screening.isEmpty()) {
      return context.say("sheets.permit-form.outdoors");
    }
    String need = RateFormat.airflow(screening.get().need().largest(), context.units());
    return screening
        .get()
        .stated()
        .map(
            f ->
                context.say(
                    "sheets.permit-form.air",
                    RateFormat.airflow(f.airflow(), context.units()),
                    need))
        .orElseGet(() -> context.say("sheets.permit-form.no-air", need));
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
    String said = (name + " " + p.phone()).strip();
    return said.isEmpty() ? context.say("sheets.permit-form.blank") : said;
  }
}
