package slabwright.inlay.settingout;

/** One corner of the blank, checked by two tapes after it has been set out. */
public record TieCheck(BlankCorner corner, SwingTies ties) {}
