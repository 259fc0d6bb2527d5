package slabwright.desk;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import slabwright.desk.model.PlanItem;
import slabwright.desk.model.Stage;
import slabwright.desk.shell.OpenQuestion;
import slabwright.desk.shell.OpenQuestion.Holds;
import slabwright.project.SiteResult;
import slabwright.site.Doorway;
import slabwright.site.FloorArea;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.ResidueStuff;
import slabwright.site.Setting;
import slabwright.site.Site;
import slabwright.site.Slab;
import slabwright.site.TrenchLevel;
import slabwright.units.Message;
import slabwright.work.AreaWorkPlan;
import slabwright.work.InlayTakeoff;
import slabwright.work.stop.JobStop;

/** Every open question of the whole plan, in the order of what it holds up. */
final class PlanQuestions {
  /** Each channel of a near-white is at least this; dye darkens a slab and never lightens it. */
  private static final int NEAR_WHITE = 0xe0;

  private final List<OpenQuestion> all = new ArrayList<>();
  private final Site site;

  private PlanQuestions(Site site) {
    this.site = site;
  }

  /**
   * The questions of a site.
   *
   * @param worked what was worked out of it, for what only that shows
   */
  public static List<OpenQuestion> of(Site site, Optional<SiteResult> worked) {
    PlanQuestions q = new PlanQuestions(site);
    q.site();
    site.areas().forEach(q::floor);
    worked.ifPresent(w -> w.work().areas().forEach(q::worked));
    return q.all.stream().sorted(Comparator.comparing(OpenQuestion::holds)).toList();
  }

  private void site() {
    if (site.areas().isEmpty()) {
      add(Holds.START, Stage.MEASURE, "", Message.of("desk.model.open.no-floor"));
    }
    if (site.start().isEmpty()) {
      add(Holds.DAYS, Stage.MEASURE, "site-start", Message.of("desk.model.open.no-date"));
    }
  }

  private void add(Holds holds, Stage stage, String field, Message what) {
    all.add(new OpenQuestion(holds, stage, Optional.empty(), Optional.empty(), field, what));
  }

  private void floor(FloorArea a) {
    doors(a);
    a.marks().forEach(m -> mark(a, m));
    if (a.machines().isEmpty()) {
      String field = "add-machine";
      ask(a, Holds.MACHINES, Stage.PREP, field, Message.of("desk.model.open.no-machine"));
    }
    if (a.finish().coats().isEmpty()) {
      ask(a, Holds.COATS, Stage.FINISH, "add-coat", Message.of("desk.model.open.no-coats"));
    }
    if (a.finish().exposure().isEmpty()) {
      String field = "finish-exposure";
      ask(a, Holds.COATS, Stage.FINISH, field, Message.of("desk.model.open.no-exposure"));
    }
    slab(a, a.slab());
    if (a.setting() == Setting.INDOOR && a.air().ceiling().isEmpty()) {
      ask(a, Holds.AIR, Stage.FINISH, "ceiling", Message.of("desk.model.open.no-ceiling"));
    }
  }

  private void doors(FloorArea a) {
    Optional<Doorway> in = a.doorways().stream().filter(Doorway::wayIn).findFirst();
    Optional<PlanItem> first =
        in.or(() -> a.doorways().stream().findFirst()).map(d -> new PlanItem.OfDoorway(d.id()));
    if (in.isEmpty()) {
      Message what =
          a.doorways().isEmpty()
              ? Message.of("desk.model.open.no-doorway")
              : Message.of("desk.model.open.no-way-in");
      String field = first.isEmpty() ? "tool-DOORWAY" : "door-way-in";
      ask(a, Holds.START, Stage.MEASURE, first, field, what);
    } else if (in.get().passage().clear().isEmpty()) {
      Message what = Message.of("desk.model.open.no-clear-width", in.get().name());
      ask(a, Holds.MACHINES, Stage.MEASURE, first, "door-clear", what);
    }
  }

  private void mark(FloorArea a, Mark m) {
    Optional<PlanItem> item = Optional.of(new PlanItem.OfMark(m.id()));
    if (m.kind() instanceof MarkKind.Residue r
        && ResidueStuff.said(r.what()) == ResidueStuff.UNKNOWN) {
      Message what = Message.of("desk.model.open.residue-unknown", m.name());
      ask(a, Holds.START, Stage.MARK, item, "kind-residue", what);
    }
    if (m.kind() instanceof MarkKind.Trench t
        && t.lie() != TrenchLevel.FLUSH
        && !t.levelled()
        && t.off().isEmpty()) {
      Message what =
          t.lie() == TrenchLevel.PROUD
              ? Message.of("desk.model.open.trench-height", m.name())
              : Message.of("desk.model.open.trench-depth", m.name());
      ask(a, Holds.MACHINES, Stage.MARK, item, "trench-off", what);
    }
  }

  private void slab(FloorArea a, Slab s) {
    if (s.mohs().isEmpty()) {
      ask(a, Holds.MACHINES, Stage.FINISH, "slab-mohs", Message.of("desk.model.open.no-mohs"));
    }
    if (s.surfaceC().isEmpty()) {
      String field = "slab-surface";
      ask(a, Holds.COATS, Stage.FINISH, field, Message.of("desk.model.open.no-surface"));
    }
    if (s.airC().isEmpty()) {
      ask(a, Holds.COATS, Stage.FINISH, "slab-air", Message.of("desk.model.open.no-air"));
    }
    if (s.humidity().isEmpty()) {
      String field = "slab-humidity";
      ask(a, Holds.COATS, Stage.FINISH, field, Message.of("desk.model.open.no-humidity"));
    }
    if (s.moisture().isEmpty()) {
      String field = "moisture-add";
      ask(a, Holds.COATS, Stage.FINISH, field, Message.of("desk.model.open.no-moisture"));
    }
  }

  private void worked(AreaWorkPlan w) {
    Optional<FloorArea> area = site.area(w.id());
    area.ifPresent(a -> w.stops().stream().filter(JobStop::blocks).forEach(s -> stop(a, s)));
    area.ifPresent(a -> w.floor().inlays().forEach(i -> inlay(a, i)));
  }

  private void stop(FloorArea a, JobStop s) {
    String kind = s.kind().name().toLowerCase(Locale.ROOT).replace('_', '-');
    ask(a, Holds.START, Stage.FINISH, "stop-cleared-" + kind, s.question());
  }

  private void inlay(FloorArea a, InlayTakeoff i) {
    Optional<PlanItem> item = Optional.of(new PlanItem.OfInlay(i.id()));
    for (InlayTakeoff.StencilDye d : i.dyes()) {
      if (d.product().isEmpty()) {
        Message what = Message.of("desk.model.open.no-dye", d.name(), i.name());
        ask(a, Holds.COATS, Stage.FINISH, "add-coat", what);
      }
      if (isNearWhite(d.colour())) {
        String field = "colour-" + d.colour().substring(1);
        Message what = Message.of("desk.model.open.near-white", d.name(), i.name());
        ask(a, Holds.CUTTING, Stage.INLAY, item, field, what);
      }
    }
  }

  /** Whether a colour {@code #rrggbb} is lighter than any dyed slab. */
  static boolean isNearWhite(String hex) {
    int rgb = Integer.parseInt(hex.substring(1), 16);
    return (rgb >> 16) >= NEAR_WHITE
        && ((rgb >> 8) & 0xff) >= NEAR_WHITE
        && (rgb & 0xff) >= NEAR_WHITE;
  }

  private void ask(FloorArea a, Holds holds, Stage stage, String field, Message what) {
    ask(a, holds, stage, Optional.empty(), field, what);
  }

  private void ask(
      FloorArea a, Holds holds, Stage stage, Optional<PlanItem> item, String field, Message what) {
    Message said =
        site.areas().size() > 1 ? Message.of("desk.model.open.of-floor", a.name(), what) : what;
    all.add(new OpenQuestion(holds, stage, Optional.of(a.id()), item, field, said));
  }
}
