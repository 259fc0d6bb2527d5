package slabwright.inlay.settingout;

/**
 * A check: both diagonals of a panel must have this length.
 *
 * @param panel its name
 * @param length in mm
 */
public record DiagonalCheck(String panel, double length) {}
