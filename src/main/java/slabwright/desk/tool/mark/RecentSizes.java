package slabwright.desk.tool.mark;

import slabwright.units.Length;

/** Sizes last used, offered for the next mark of the sort. */
public final class RecentSizes {
  private Length trench = Length.inches(18);
  private Length boothLength = Length.feet(5);
  private Length boothDepth = Length.inches(28);
  private Length boothGap = Length.inches(9);
  private Length boothOff = Length.ZERO;

  Length trench() {
    return trench;
  }

  void setTrench(Length v) {
    trench = v;
  }

  Length boothLength() {
    return boothLength;
  }

  Length boothDepth() {
    return boothDepth;
  }

  Length boothGap() {
    return boothGap;
  }

  /** How far a row stands off its wall. */
  Length boothOff() {
    return boothOff;
  }

  void setRow(TypedRow row) {
    boothLength = row.size().map(SizePair::first).orElse(boothLength);
    boothDepth = row.size().map(SizePair::second).orElse(boothDepth);
    boothGap = row.gap().orElse(boothGap);
    boothOff = row.off().orElse(boothOff);
  }
}
