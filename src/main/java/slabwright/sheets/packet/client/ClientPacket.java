package slabwright.sheets.packet.client;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import slabwright.floor.FloorTakeoff;
import slabwright.inlay.OpenQuestions;
import slabwright.inlay.PlacedInlay;
import slabwright.inlay.artwork.ArtworkQuestion;
import slabwright.inlay.settingout.ReadingDirection;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.sheets.packet.PacketContents;
import slabwright.sheets.packet.StopNotice;
import slabwright.sheets.page.Block;
import slabwright.sheets.page.BulletBlock;
import slabwright.sheets.page.CautionBlock;
import slabwright.sheets.page.ColumnPages;
import slabwright.sheets.page.FramedDraft;
import slabwright.sheets.page.Gap;
import slabwright.sheets.page.Heading;
import slabwright.sheets.page.MissingPages;
import slabwright.sheets.page.PageDraft;
import slabwright.sheets.page.PairBlock;
import slabwright.sheets.page.Paragraph;
import slabwright.sheets.page.SheetContext;
import slabwright.sheets.placement.SettingOutSteps;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.units.Message;
import slabwright.work.AreaResult;
import slabwright.work.step.StepKind;

/** The client's pages: floor, each graphic, offer, what is seen to before, dates and care. */
public final class ClientPacket {
  /** The longer side of a graphic, mm: a little over 6 in. */
  private static final double GRAPHIC = 152.5;

  /** With less, colours and pieces are not told apart: then the lines to sign go on over. */
  private static final double LEAST_GRAPHIC = 100;

  /** Height of the largest floor on the first page, mm: the most and the least. */
  private static final double LARGEST = 124;

  private static final double SMALLEST = 58;

  /** Share of the width that the view from the way in gets; less where reasons to stop are long. */
  private static final double VIEW = 0.52;

  private static final double NARROW_VIEW = 0.36;

  private final PacketContents job;
  private final SheetContext context;

  private ClientPacket(PacketContents job) {
    this.job = job;
    this.context = job.portrait();
  }

  public static List<FramedDraft> drafts(PacketContents job, MissingPages missing) {
    ClientPacket packet = new ClientPacket(job);
    SheetContext context = packet.context;
    List<PageDraft> pages =
        new ArrayList<>(
            missing.or(
                context, Message.of("sheets.client-packet.floor"), "", false, packet::floors));
    for (AreaResult area : job.areas()) {
      for (PlacedInlay i : area.inlays()) {
        Message title = Message.of("sheets.client-packet.graphic", i.inlay().name());
        String floor = area.takeoff().area().name();
        pages.addAll(missing.or(context, title, floor, false, () -> packet.graphic(area, i)));
      }
    }
    Message offer = Message.of("sheets.offer-page.title");
    pages.addAll(missing.or(context, offer, "", false, () -> new OfferPage(job, context).drafts()));
    Message dates = Message.of("sheets.dates-page.title");
    pages.addAll(missing.or(context, dates, "", false, () -> new DatesPage(job, context).drafts()));
    Message order = Message.of("sheets.change-order.title");
    List<PageDraft> changed =
        missing.or(context, order, "", false, () -> ChangeOrder.pageDrafts(job));
    List<FramedDraft> all = new ArrayList<>(FramedDraft.all(context, changed));
    all.addAll(FramedDraft.all(context, pages));
    return all;
  }

  private PageDraft page(String title, String subtitle) {
    return new PageDraft(title, subtitle, "", Optional.empty(), List.of());
  }

  /** The floors as they should look, all on one page where the largest still has some size. */
  private List<PageDraft> floors() {
    if (job.areas().isEmpty()) {
      return List.of();
    }
    String named =
        job.areas().stream()
            .map(
                a ->
                    context.say(
                        "sheets.client-packet.area",
                        a.takeoff().area().name(),
                        context.wholeArea(a.takeoff().net().area())))
            .reduce((a, b) -> a + " · " + b)
            .orElse("");
    PageDraft page = page(context.say("sheets.client-packet.floor"), named);
    List<Seen> floors = new ArrayList<>();
    job.areas().stream()
        .sorted(Comparator.comparingDouble((AreaResult a) -> -a.takeoff().gross().area()))
        .forEach(a -> floors.add(new Seen(a, picture(a))));
    List<Seen> tried =
        floors.stream()
            .map(f -> new Seen(f.area(), f.picture().map(ExpectedFloor::tried)))
            .toList();
    Sizes sizes = sizes(page, tried);
    return ColumnPages.of(context, page, floors(floors, sizes.high(), sizes.view()));
  }

  private Optional<ExpectedFloor> picture(AreaResult area) {
    return job.pictured()
        ? Optional.of(new ExpectedFloor(area, job.work().book()))
        : Optional.empty();
  }

  /** The largest with which all stands on one page; the least where none does. */
  private Sizes sizes(PageDraft page, List<Seen> floors) {
    for (double view : List.of(VIEW, NARROW_VIEW)) {
      for (double high = LARGEST; high >= SMALLEST; high -= 6) {
        if (ColumnPages.of(context, page, floors(floors, high, view)).size() == 1) {
          return new Sizes(high, view);
        }
      }
    }
    return new Sizes(SMALLEST, NARROW_VIEW);
  }

  /** Height of the largest floor, mm, and the view's share of the width. */
  private record Sizes(double high, double view) {}

  /** A floor; without a picture it is drawn in lines. */
  private record Seen(AreaResult area, Optional<ExpectedFloor> picture) {}

  /** Nobody is told of a panel that no day of the job makes. */
  private boolean isSampled() {
    return job.work().outlook().order().maybe().stream()
        .flatMap(d -> d.steps().stream())
        .anyMatch(s -> s.task().type().kind() == StepKind.SAMPLE_PANEL);
  }

  private List<Block> floors(List<Seen> floors, double high, double view) {
    ClientPlan plan = new ClientPlan(context);
    List<Block> blocks = new ArrayList<>(StopNotice.first(job, context));
    blocks.add(plan.floor(floors.get(0).area(), floors.get(0).picture(), high));
    blocks.add(new PairBlock(view, fromDoor(floors.get(0).picture()), visible(plan)));
    Block promise =
        new CautionBlock(
            job.pictured()
                ? context.say("sheets.client-packet.a-picture")
                : context.say("sheets.client-packet.a-plan"),
            isSampled()
                ? context.say("sheets.client-packet.not-a-promise")
                : context.say("sheets.client-packet.not-a-promise-no-panel"));
    for (int i = 1; i < floors.size(); i += 2) {
      List<Block> right =
          i + 1 < floors.size() ? small(plan, floors.get(i + 1)) : List.of(new Gap(3), promise);
      blocks.add(new PairBlock(0.45, small(plan, floors.get(i)), right));
    }
    if (floors.size() % 2 == 1) {
      blocks.add(promise);
    }
    floors.stream()
        .flatMap(f -> f.picture().stream().flatMap(ExpectedFloor::uncoloured))
        .distinct()
        .forEach(d -> blocks.add(new Paragraph(context.say("sheets.client-packet.undyed", d))));
    return blocks;
  }

  private static List<Block> small(ClientPlan plan, Seen floor) {
    return List.of(
        new Paragraph(floor.area().takeoff().area().name()),
        plan.floor(floor.area(), floor.picture(), 34));
  }

  /** The view from the way in; where none is made, that it is not and how it is got. */
  private List<Block> fromDoor(Optional<ExpectedFloor> picture) {
    return picture
        .map(
            p ->
                List.of(p.fromDoor(), new Paragraph(context.say("sheets.client-packet.from-door"))))
        .orElse(
            List.of(
                new CautionBlock(
                    context.say("sheets.client-packet.no-picture"),
                    context.say("sheets.client-packet.no-picture-run"))));
  }

  private List<Block> visible(ClientPlan plan) {
    List<String> expected = plan.expectations(job.areas());
    return expected.isEmpty()
        ? List.of()
        : List.of(
            new Heading(context.say("sheets.client-packet.stays-visible")),
            new BulletBlock(expected));
  }

  /** One graphic large, its place, and the lines to sign, all on one page. */
  private List<PageDraft> graphic(AreaResult area, PlacedInlay placed) {
    List<PageDraft> pages = graphic(area, placed, GRAPHIC);
    for (double longer = GRAPHIC - 8; pages.size() > 1 && longer > LEAST_GRAPHIC; longer -= 8) {
      List<PageDraft> smaller = graphic(area, placed, longer);
      pages = smaller.size() < pages.size() ? smaller : pages;
    }
    return pages;
  }

  private List<PageDraft> graphic(AreaResult area, PlacedInlay placed, double longer) {
    List<Block> blocks = new ArrayList<>(StopNotice.brief(job, context));
    List<ArtworkQuestion> asked = OpenQuestions.of(placed.artwork(), placed.inlay().spec());
    if (!asked.isEmpty()) {
      String words =
          asked.stream()
              .map(q -> ColourWords.named(context.say(q.message()), context))
              .collect(Collectors.joining(" "));
      blocks.add(new CautionBlock(context.say("sheets.client-packet.to-decide"), words));
      blocks.add(new Gap(3));
    }
    blocks.add(new GraphicBlock(placed, longer, context));
    blocks.add(
        new PairBlock(
            0.4, List.of(new ClientPlan(context).place(area, 36)), facts(area.takeoff(), placed)));
    blocks.add(
        new PairBlock(
            0.5,
            List.of(new SignBlock(context.say("sheets.client-packet.approve"), context)),
            List.of(new SignBlock(sample(), context))));
    Bounds painted = placed.plan().openings().bounds();
    String size =
        context.say(
            "sheets.client-packet.size",
            context.length(painted.width()),
            context.length(painted.height()));
    return ColumnPages.of(
        context,
        page(
            context.say("sheets.client-packet.graphic", placed.inlay().name()),
            StopNotice.held(job, context, size)),
        blocks);
  }

  private String sample() {
    return BeforeBlocks.sampleSigned(job, context)
        .map(t -> context.say("sheets.client-packet.sample-on", t))
        .orElse(context.say("sheets.client-packet.sample"));
  }

  /** Where it lies, from the one origin that all papers set out from, and how it reads. */
  private List<Block> facts(FloorTakeoff floor, PlacedInlay placed) {
    List<Block> facts = new ArrayList<>();
    Vec middle = placed.inlay().middle().vec();
    String from =
        placed
            .settingOut(floor, context.units())
            .map(o -> new SettingOutSteps(o, context.units(), context.words()).origin())
            .orElse("");
    if (!from.isEmpty()) {
      facts.add(new Paragraph(from));
    }
    for (Doorway d : doors(floor.area())) {
      DoorOffset off = DoorOffset.of(floor.area(), d, middle);
      Message reading =
          ReadingDirection.of(d.name(), off.middle(), middle, placed.inlay().turn()).said();
      facts.add(
          new Paragraph(from.isEmpty() ? off.sentence(reading, context) : context.say(reading)));
    }
    return facts;
  }

  /** The ways in; every doorway where there is none. */
  private static List<Doorway> doors(FloorArea area) {
    List<Doorway> ways = area.doorways().stream().filter(Doorway::wayIn).limit(2).toList();
    return ways.isEmpty() ? area.doorways().stream().limit(2).toList() : ways;
  }
}
