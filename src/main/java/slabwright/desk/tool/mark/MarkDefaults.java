package slabwright.desk.tool.mark;

import slabwright.site.MarkKind;
import slabwright.site.MarkType;
import slabwright.site.TrenchLevel;
import slabwright.units.Length;
import slabwright.words.Words;

/** First settings of each kind of mark, to be changed on its card. */
final class MarkDefaults {
  private MarkDefaults() {}

  static MarkKind kind(MarkType type, Words words) {
    return switch (type) {
      case TRENCH -> new MarkKind.Trench(TrenchLevel.PROUD, false);
      case PATCH -> new MarkKind.Patch();
      case RESIDUE -> new MarkKind.Residue("adhesive");
      case ISLAND -> new MarkKind.Island();
      case BOOTH -> new MarkKind.Booth();
      case COLUMN -> new MarkKind.Column();
      case TOP_OR_STEP -> new MarkKind.TopOrStep(Length.inches(1.5), 1);
      case JOINT -> new MarkKind.Joint(Length.mm(5), Length.mm(25));
      case CRACK -> new MarkKind.Crack(Length.mm(3), Length.mm(10));
      case SPALL -> new MarkKind.Spall(Length.mm(12));
      case DRAIN_OR_BOX -> new MarkKind.DrainOrBox();
      case LEVEL_CHANGE -> new MarkKind.LevelChange(Length.mm(20));
      case MASKED_TRIM -> new MarkKind.MaskedTrim(Length.mm(300));
      case POWER_POINT -> new MarkKind.PowerPoint("16 A");
      case DETECTOR -> new MarkKind.Detector();
      case IGNITION_SOURCE -> new MarkKind.IgnitionSource(words.say("desk.tool.mark.pilot-light"));
      case AIR_OUTLET -> new MarkKind.AirOutlet();
    };
  }
}
