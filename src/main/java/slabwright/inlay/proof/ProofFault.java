package slabwright.inlay.proof;

import java.util.Optional;
import slabwright.shape.Vec;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.QuantityFormat;
import slabwright.units.UnitSystem;

/** Something in the shop's drawing that must be put right before cutting; one kind each. */
public sealed interface ProofFault
    permits LabelFault,
        PanelFault,
        ProofFault.AtPlace,
        ProofFault.Mirrored,
        ProofFault.WrongSize,
        ProofFault.Stretched,
        ProofFault.TurnedInBlank,
        ProofFault.ShiftedInBlank,
        ProofFault.Exchanged,
        ProofFault.EdgeMissing,
        ProofFault.FatterAllRound,
        ProofFault.NotFound {
  /** Its kind as it stands in JSON. */
  String kind();

  /** One sentence, with lengths in the units that the site shows. */
  Message message(UnitSystem units);

  /** Where it is, in the blank's frame, mm; empty when it is everywhere. */
  default Optional<Vec> place() {
    return Optional.empty();
  }

  /** A fault that lies somewhere. */
  sealed interface AtPlace extends ProofFault {
    /** Where, or where it is worst, in the blank's frame, mm. */
    Vec at();

    @Override
    default Optional<Vec> place() {
      return Optional.of(at());
    }
  }

  /** How much, mm: a deviation, or the longer side of a piece; 0 where there is no length. */
  default double sizeMm() {
    return 0;
  }

  /** The drawing is a mirror image of the plan. */
  record Mirrored() implements ProofFault {
    @Override
    public String kind() {
      return "mirrored";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-fault.mirrored");
    }
  }

  /**
   * The drawing has another size than the plan.
   *
   * @param percent of the plan's size, plus when the drawing is too large
   * @param sizeMm how far it moves the outermost point of an opening
   */
  record WrongSize(double percent, double sizeMm) implements ProofFault {
    @Override
    public String kind() {
      return "size-off";
    }

    @Override
    public Message message(UnitSystem units) {
      String by = ProofFigures.percent(percent);
      String far = LengthFormat.fine(sizeMm, units);
      return percent > 0
          ? Message.of("inlay.proof-fault.too-large", by, far)
          : Message.of("inlay.proof-fault.too-small", by, far);
    }
  }

  /**
   * The drawing is stretched in one direction.
   *
   * @param percent more than across it; positive
   * @param degrees of that direction, clockwise from the blank's top side, 0 to 180
   * @param sizeMm how far it moves the outermost point of an opening
   */
  record Stretched(double percent, double degrees, double sizeMm) implements ProofFault {
    private static final double UPRIGHT = 8;

    @Override
    public String kind() {
      return "stretched";
    }

    @Override
    public Message message(UnitSystem units) {
      String by = ProofFigures.percent(percent);
      String far = LengthFormat.fine(sizeMm, units);
      if (degrees < UPRIGHT || degrees > 180 - UPRIGHT) {
        return Message.of("inlay.proof-fault.stretched-wide", by, far);
      }
      return Math.abs(degrees - 90) < UPRIGHT
          ? Message.of("inlay.proof-fault.stretched-high", by, far)
          : Message.of("inlay.proof-fault.stretched-aslant", by, far);
    }
  }

  /**
   * The openings are turned inside their blank.
   *
   * @param degrees clockwise as read when positive
   * @param sizeMm how far it moves the outermost point of an opening
   */
  record TurnedInBlank(double degrees, double sizeMm) implements ProofFault {
    @Override
    public String kind() {
      return "turned-in-blank";
    }

    @Override
    public Message message(UnitSystem units) {
      String by = QuantityFormat.number(Math.abs(degrees), 2);
      String far = LengthFormat.fine(sizeMm, units);
      return degrees > 0
          ? Message.of("inlay.proof-fault.turned-clockwise", by, far)
          : Message.of("inlay.proof-fault.turned-counter-clockwise", by, far);
    }
  }

  /** The openings are shifted inside their blank, by mm to the right and down as read. */
  record ShiftedInBlank(double right, double down) implements ProofFault {
    @Override
    public String kind() {
      return "shifted-in-blank";
    }

    @Override
    public double sizeMm() {
      return Math.hypot(right, down);
    }

    @Override
    public Message message(UnitSystem units) {
      String across = LengthFormat.fine(Math.abs(right), units);
      String along = LengthFormat.fine(Math.abs(down), units);
      if (right >= 0) {
        return down >= 0
            ? Message.of("inlay.proof-fault.shifted-right-down", across, along)
            : Message.of("inlay.proof-fault.shifted-right-up", across, along);
      }
      return down >= 0
          ? Message.of("inlay.proof-fault.shifted-left-down", across, along)
          : Message.of("inlay.proof-fault.shifted-left-up", across, along);
    }
  }

  /** What is pulled out and what stays are exchanged. */
  record Exchanged() implements ProofFault {
    @Override
    public String kind() {
      return "polarity-exchanged";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-fault.exchanged");
    }
  }

  /**
   * The outer edge of the blank or of a panel is not drawn.
   *
   * @param panel its name; empty for the whole blank
   */
  record EdgeMissing(String panel) implements ProofFault {
    @Override
    public String kind() {
      return "blank-edge-missing";
    }

    @Override
    public Message message(UnitSystem units) {
      return panel.isEmpty()
          ? Message.of("inlay.proof-fault.edge-missing")
          : Message.of("inlay.proof-fault.panel-edge-missing", panel);
    }
  }

  /**
   * The outer edge of the blank or of a panel lies elsewhere.
   *
   * @param panel its name; empty for the whole blank
   * @param at where it is worst
   */
  record BlankEdgeOff(String panel, Vec at, double sizeMm) implements AtPlace {
    @Override
    public String kind() {
      return "blank-edge-off";
    }

    @Override
    public Message message(UnitSystem units) {
      String far = LengthFormat.fine(sizeMm, units);
      String x = LengthFormat.show(at.x(), units);
      String y = LengthFormat.show(at.y(), units);
      return panel.isEmpty()
          ? Message.of("inlay.proof-fault.blank-edge-off", far, x, y)
          : Message.of("inlay.proof-fault.panel-edge-off", far, x, y, panel);
    }
  }

  /**
   * An opening of the plan, or a part of one, that is not in the drawing.
   *
   * @param at in the blank's frame, mm
   * @param area mm²
   * @param sizeMm the longer side of its box
   */
  record PieceMissing(Vec at, double area, double sizeMm) implements AtPlace {
    @Override
    public String kind() {
      return "piece-missing";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of(
          "inlay.proof-fault.piece-missing",
          QuantityFormat.smallArea(area, units),
          LengthFormat.show(at.x(), units),
          LengthFormat.show(at.y(), units));
    }
  }

  /**
   * An opening in the drawing that is not in the plan.
   *
   * @param at in the blank's frame, mm
   * @param area mm²
   * @param sizeMm the longer side of its box
   */
  record PieceAdded(Vec at, double area, double sizeMm) implements AtPlace {
    @Override
    public String kind() {
      return "piece-added";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of(
          "inlay.proof-fault.piece-added",
          QuantityFormat.smallArea(area, units),
          LengthFormat.show(at.x(), units),
          LengthFormat.show(at.y(), units));
    }
  }

  /**
   * Letters, or other small openings in a row, have another shape.
   *
   * @param count how many openings
   * @param at the middle of the row
   * @param sizeMm its length
   */
  record OtherTypeface(int count, Vec at, double sizeMm) implements AtPlace {
    @Override
    public String kind() {
      return "other-typeface";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of(
          "inlay.proof-fault.other-typeface",
          count,
          LengthFormat.show(at.x(), units),
          LengthFormat.show(at.y(), units));
    }
  }

  /**
   * Edges of openings stray.
   *
   * @param at where it is worst
   * @param places how many stretches of edge lie beyond the limit
   * @param slivers mm² of all slivers together
   */
  record EdgeOff(Vec at, double sizeMm, int places, double slivers) implements AtPlace {
    @Override
    public String kind() {
      return "edge-off";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of(
          "inlay.proof-fault.edge-off",
          LengthFormat.fine(sizeMm, units),
          LengthFormat.show(at.x(), units),
          LengthFormat.show(at.y(), units),
          places,
          QuantityFormat.smallArea(slivers, units));
    }
  }

  /**
   * All openings are fatter all round, or thinner when {@code fat} is negative; mm on each side.
   */
  record FatterAllRound(double fat) implements ProofFault {
    @Override
    public String kind() {
      return fat > 0 ? "fatter-all-round" : "thinner-all-round";
    }

    @Override
    public double sizeMm() {
      return Math.abs(fat);
    }

    @Override
    public Message message(UnitSystem units) {
      String by = LengthFormat.fine(Math.abs(fat), units);
      return fat > 0
          ? Message.of("inlay.proof-fault.fatter", by)
          : Message.of("inlay.proof-fault.thinner", by);
    }
  }

  /** A cut that divides waste runs into film that stays. */
  record WeedCutOff(Vec at) implements AtPlace {
    @Override
    public String kind() {
      return "weed-cut-off";
    }

    @Override
    public Message message(UnitSystem units) {
      String x = LengthFormat.show(at.x(), units);
      return Message.of("inlay.proof-fault.weed-cut-off", x, LengthFormat.show(at.y(), units));
    }
  }

  /**
   * The plan's graphic was not found in the drawing.
   *
   * @param overlap best share found, 0 to 1
   */
  record NotFound(double overlap) implements ProofFault {
    @Override
    public String kind() {
      return "not-found";
    }

    @Override
    public Message message(UnitSystem units) {
      return Message.of("inlay.proof-fault.not-found", QuantityFormat.number(overlap * 100, 0));
    }
  }
}
