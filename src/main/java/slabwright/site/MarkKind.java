package slabwright.site;

import java.util.Optional;
import slabwright.units.Length;

/**
 * The closed set of what can be marked on a floor. A kind says three things: is it floor, does it
 * make an edge, who may work on it.
 */
public sealed interface MarkKind {
  /**
   * A strip of new concrete where a service was cut in.
   *
   * @param off how far it lies off the old slab when it was cut in: depth of a low one, height of a
   *     proud one; a flush one has none
   */
  record Trench(TrenchLevel lie, boolean levelled, Optional<Length> off) implements MarkKind {
    /** A trench whose depth or height was not measured. */
    public Trench(TrenchLevel lie, boolean levelled) {
      this(lie, levelled, Optional.empty());
    }

    /** A trench that lies otherwise; a depth does not become a height. */
    public Trench withLie(TrenchLevel v) {
      return new Trench(v, levelled, v == lie ? off : Optional.empty());
    }

    public Trench withLevelled(boolean v) {
      return new Trench(lie, v, off);
    }

    public Trench withOff(Optional<Length> v) {
      return new Trench(lie, levelled, v);
    }

    @Override
    public MarkType type() {
      return MarkType.TRENCH;
    }

    /** Whether the machine must stay off until it has been ground or filled flush. */
    public boolean stopsMachine() {
      return lie != TrenchLevel.FLUSH && !levelled;
    }
  }

  /** A filled or self-levelled spot. */
  record Patch() implements MarkKind {
    @Override
    public MarkType type() {
      return MarkType.PATCH;
    }
  }

  /** Old adhesive, thinset or grout; {@code what} says which. */
  record Residue(String what) implements MarkKind {
    @Override
    public MarkType type() {
      return MarkType.RESIDUE;
    }

    /** What it is, by its own words and the name of its mark. */
    public ResidueStuff stuff(String name) {
      return ResidueStuff.said(name + " " + what);
    }
  }

  /** A fixed object standing on the slab. */
  record Island() implements MarkKind {
    @Override
    public MarkType type() {
      return MarkType.ISLAND;
    }
  }

  /** Fixed seating or a partition bay. */
  record Booth() implements MarkKind {
    @Override
    public MarkType type() {
      return MarkType.BOOTH;
    }
  }

  /** A column or pier. */
  record Column() implements MarkKind {
    @Override
    public MarkType type() {
      return MarkType.COLUMN;
    }
  }

  /**
   * A counter top or stair tread, ground with hand tools as a small job of its own.
   *
   * @param thickness of the edge that is ground along its free sides
   * @param steps number of equal treads in it; 1 for a top
   */
  record TopOrStep(Length thickness, int steps) implements MarkKind {
    @Override
    public MarkType type() {
      return MarkType.TOP_OR_STEP;
    }
  }

  /** A sawn or formed joint, for filler. */
  record Joint(Length width, Length depth) implements MarkKind {
    @Override
    public MarkType type() {
      return MarkType.JOINT;
    }
  }

  /** A crack, for filler. */
  record Crack(Length width, Length depth) implements MarkKind {
    @Override
    public MarkType type() {
      return MarkType.CRACK;
    }
  }

  /** A broken-out spot, for filler. */
  record Spall(Length depth) implements MarkKind {
    @Override
    public MarkType type() {
      return MarkType.SPALL;
    }
  }

  /** A floor drain or floor box. */
  record DrainOrBox() implements MarkKind {
    @Override
    public MarkType type() {
      return MarkType.DRAIN_OR_BOX;
    }
  }

  /**
   * A line where the floor steps by {@code height}; positive up to the left of the line's travel.
   */
  record LevelChange(Length height) implements MarkKind {
    @Override
    public MarkType type() {
      return MarkType.LEVEL_CHANGE;
    }
  }

  /** Glass or trim to mask, up to {@code height}. */
  record MaskedTrim(Length height) implements MarkKind {
    @Override
    public MarkType type() {
      return MarkType.MASKED_TRIM;
    }
  }

  /** A power point, with what it gives, such as "16 A". */
  record PowerPoint(String rating) implements MarkKind {
    @Override
    public MarkType type() {
      return MarkType.POWER_POINT;
    }
  }

  /** A smoke detector or sprinkler head. */
  record Detector() implements MarkKind {
    @Override
    public MarkType type() {
      return MarkType.DETECTOR;
    }
  }

  /** Something that can light vapour; {@code what} names it. */
  record IgnitionSource(String what) implements MarkKind {
    @Override
    public MarkType type() {
      return MarkType.IGNITION_SOURCE;
    }
  }

  /** Where air is drawn out or let in. */
  record AirOutlet() implements MarkKind {
    @Override
    public MarkType type() {
      return MarkType.AIR_OUTLET;
    }
  }

  /** Which of the closed set this is, with what all marks of the kind have in common. */
  MarkType type();
}
