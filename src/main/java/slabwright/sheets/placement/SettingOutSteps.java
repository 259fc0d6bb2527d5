package slabwright.sheets.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slabwright.inlay.panel.PanelPlan;
import slabwright.inlay.settingout.Hand;
import slabwright.inlay.settingout.PanelPlace;
import slabwright.inlay.settingout.SettingOut;
import slabwright.inlay.settingout.SettingOutOrigin;
import slabwright.inlay.settingout.SettingOutParameters;
import slabwright.inlay.settingout.SnappedLines;
import slabwright.inlay.settingout.SquareCheck;
import slabwright.inlay.settingout.TieCheck;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.UnitSystem;
import slabwright.words.Words;

/** The setting out of an inlay in sentences, one a step; the same on every paper. */
public record SettingOutSteps(SettingOut settingOut, UnitSystem units, Words words) {
  /** Every step in order: the lines, then the panels, then the checks. */
  public List<String> all() {
    List<String> steps = new ArrayList<>(lines());
    steps.addAll(panels());
    steps.addAll(checks());
    return steps;
  }

  /** Where the middle lies, in one sentence from the origin; empty where there is none. */
  public String origin() {
    return settingOut.lines().map(this::origin).orElse("");
  }

  private String origin(SnappedLines lines) {
    String from =
        lines.origin() instanceof SettingOutOrigin.DoorMiddle d
            ? words.say("sheets.setting-out-steps.from-door", d.doorway())
            : words.say(
                "sheets.setting-out-steps.from-wall",
                lines.origin().wallLetter(),
                fromCorner((SettingOutOrigin.WallPoint) lines.origin()));
    return lines.aside() == 0
        ? words.say("sheets.setting-out-steps.straight-in", from, length(lines.along()))
        : words.say(
            "sheets.setting-out-steps.in-and-aside",
            from,
            length(lines.along()),
            length(lines.aside()),
            hand(lines.side()));
  }

  private String fromCorner(SettingOutOrigin.WallPoint p) {
    return words.say("sheets.setting-out-steps.from-corner", length(p.distance()), p.from().name());
  }

  /** From the origin to the two snapped lines. */
  public List<String> lines() {
    if (settingOut.lines().isEmpty()) {
      return List.of(words.say("sheets.setting-out-steps.no-origin"));
    }
    SnappedLines lines = settingOut.lines().get();
    List<String> steps = new ArrayList<>();
    String wall = lines.origin().wallLetter();
    steps.add(
        lines.origin() instanceof SettingOutOrigin.DoorMiddle d
            ? words.say("sheets.setting-out-steps.door-middle", d.doorway(), length(d.halfWidth()))
            : words.say(
                "sheets.setting-out-steps.wall-point",
                wall,
                fromCorner((SettingOutOrigin.WallPoint) lines.origin())));
    steps.add(words.say("sheets.setting-out-steps.square-wall", wall, atWall(lines)));
    steps.add(words.say("sheets.setting-out-steps.along", length(lines.along())));
    if (lines.aside() > 0) {
      steps.add(
          words.say(
              "sheets.setting-out-steps.aside",
              hand(lines.side()),
              atStation(lines),
              length(lines.aside())));
      steps.add(words.say("sheets.setting-out-steps.cross-aside"));
    } else {
      steps.add(words.say("sheets.setting-out-steps.cross-on-line", atStation(lines)));
    }
    lines.turned().ifPresent(t -> steps.add(turned(t)));
    return steps;
  }

  private String turned(SnappedLines.Turned t) {
    Message way =
        t.on() > 0
            ? Message.of("sheets.setting-out-steps.on")
            : Message.of("sheets.setting-out-steps.back");
    return words.say(
        "sheets.setting-out-steps.turned",
        length(Math.abs(t.on())),
        way,
        length(t.off()),
        hand(t.side()));
  }

  /** Such as "3′ 0″ along the wall to the left as you look in, 4′ 0″ straight in, 5′ 0″ across". */
  private String atWall(SnappedLines lines) {
    SquareCheck s = lines.square();
    return words.say(
        "sheets.setting-out-steps.legs-at-wall",
        length(s.lineLeg() * s.unit()),
        hand(lines.alongWall()),
        length(s.squareLeg() * s.unit()),
        length(s.across() * s.unit()));
  }

  /** The same legs read as those at the wall would put the mark behind it: each with its way. */
  private String atStation(SnappedLines lines) {
    SquareCheck s = lines.crossSquare();
    String leg = length(s.lineLeg() * s.unit());
    return words.say(
        "sheets.setting-out-steps.legs-at-mark",
        lines.goesOn()
            ? Message.of("sheets.setting-out-steps.leg-on", leg)
            : Message.of("sheets.setting-out-steps.leg-back", leg),
        length(s.squareLeg() * s.unit()),
        hand(lines.offLine()),
        length(s.across() * s.unit()));
  }

  /** Panel by panel. */
  public List<String> panels() {
    return panels(settingOut.panels());
  }

  /**
   * Panel by panel of the stencils that lie on one blank.
   *
   * @param stencil that has a blank of its own; 0 for those on the whole blank
   */
  public List<String> panels(int stencil) {
    return panels(settingOut.panels().stream().filter(p -> p.stencil() == stencil).toList());
  }

  private List<String> panels(List<PanelPlace> places) {
    List<String> steps = new ArrayList<>();
    for (PanelPlace p : places) {
      steps.add(
          switch (p.lap()) {
            case FIRST -> first(p);
            case OVER -> words.say("sheets.setting-out-steps.over", p.panel());
            case UNDER -> words.say("sheets.setting-out-steps.under", p.panel());
            case APART ->
                words.say(
                    "sheets.setting-out-steps.apart",
                    p.panel(),
                    p.stencil(),
                    p.left() >= 0
                        ? side(p.left(), Message.of("sheets.setting-out-steps.left-of"))
                        : side(-p.left(), Message.of("sheets.setting-out-steps.right-of")),
                    p.above() >= 0
                        ? side(p.above(), Message.of("sheets.setting-out-steps.above"))
                        : side(-p.above(), Message.of("sheets.setting-out-steps.below")));
          });
    }
    return steps;
  }

  private String first(PanelPlace p) {
    String left = side(p.left(), Message.of("sheets.setting-out-steps.left-of"));
    String above = side(p.above(), Message.of("sheets.setting-out-steps.above"));
    return settingOut.panels().stream().anyMatch(o -> o.stencil() > 0)
        ? words.say("sheets.setting-out-steps.first-of-whole", p.panel(), left, above)
        : words.say("sheets.setting-out-steps.first-panel", p.panel(), left, above);
  }

  private String side(double mm, Message way) {
    return words.say("sheets.setting-out-steps.so-far", length(mm), way);
  }

  /** The diagonal, then two corners by swung tapes. */
  public List<String> checks() {
    List<String> steps = new ArrayList<>();
    steps.add(words.say("sheets.setting-out-steps.diagonal", length(settingOut.diagonal())));
    if (!settingOut.checks().isEmpty()) {
      String corners =
          settingOut.checks().stream().map(this::tied).collect(Collectors.joining("; "));
      double worst =
          settingOut.checks().stream().mapToDouble(c -> c.ties().errorAt95()).max().orElse(0);
      double tape = SettingOutParameters.usual().fixedError();
      steps.add(words.say("sheets.setting-out-steps.ties", corners, length(worst), length(tape)));
    }
    return steps;
  }

  /** Before any film lies: the corners, what proves them, and the ticks that all films go by. */
  public List<String> beforeTheFirstFilm(PanelPlan panels) {
    SettingOut.BlankReach b = settingOut.blank();
    List<String> steps = new ArrayList<>();
    boolean even = length(b.left()).equals(length(b.right()));
    boolean level = length(b.above()).equals(length(b.below()));
    steps.add(
        even && level
            ? words.say(
                "sheets.setting-out-steps.even-corners", length(b.left()), length(b.above()))
            : words.say(
                "sheets.setting-out-steps.corners",
                side(b.left(), Message.of("sheets.setting-out-steps.left-of")),
                side(b.right(), Message.of("sheets.setting-out-steps.right-of")),
                side(b.above(), Message.of("sheets.setting-out-steps.above")),
                side(b.below(), Message.of("sheets.setting-out-steps.below"))));
    List<String> checks = new ArrayList<>(checks());
    checks.set(
        0, words.say("sheets.setting-out-steps.corners-diagonal", length(settingOut.diagonal())));
    steps.addAll(checks);
    if (!panels.ticks().isEmpty()) {
      steps.add(words.say("sheets.setting-out-steps.ticks"));
    }
    return steps;
  }

  private String tied(TieCheck c) {
    return words.say(
        "sheets.setting-out-steps.tied",
        c.corner().word(),
        length(c.ties().fromFirst()),
        c.ties().first().name(),
        length(c.ties().fromSecond()),
        c.ties().second().name());
  }

  private Message hand(Hand h) {
    return switch (h) {
      case LEFT -> Message.of("sheets.setting-out-steps.left");
      case RIGHT -> Message.of("sheets.setting-out-steps.right");
    };
  }

  /** A length whose parts no line break takes apart. */
  private String length(double mm) {
    return LengthFormat.show(mm, units).replace(' ', '\u00a0');
  }
}
