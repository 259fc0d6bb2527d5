package slabwright.tape.leastsquares;

import java.util.ArrayList;
import java.util.List;
import slabwright.shape.Ring;
import slabwright.shape.Vec;

/**
 * A closed walk shut by the compass rule: each course takes a share of the gap in proportion to its
 * length. Works in any unit of length.
 *
 * @param courses the courses as walked
 * @param corrections what the rule adds to each
 */
record CompassRule(List<Vec> courses, List<Vec> corrections) {
  public CompassRule {
    courses = List.copyOf(courses);
    corrections = List.copyOf(corrections);
  }

  /** Spreads the gap of {@code courses}, the displacements along the walls in walking order. */
  public static CompassRule of(List<Vec> courses) {
    Vec gap = sum(courses);
    double perimeter = courses.stream().mapToDouble(Vec::length).sum();
    List<Vec> corrections = new ArrayList<>();
    for (Vec c : courses) {
      corrections.add(perimeter == 0 ? Vec.ZERO : gap.times(-c.length() / perimeter));
    }
    return new CompassRule(courses, corrections);
  }

  /** From where the walk began to where it ended. */
  public Vec gap() {
    return sum(courses);
  }

  public double perimeter() {
    return courses.stream().mapToDouble(Vec::length).sum();
  }

  /** Gap over perimeter; 0 for a walk that closes. */
  public double ratio() {
    return perimeter() == 0 ? 0 : gap().length() / perimeter();
  }

  /** The courses after the rule; they close. */
  public List<Vec> adjusted() {
    List<Vec> adjusted = new ArrayList<>();
    for (int i = 0; i < courses.size(); i++) {
      adjusted.add(courses.get(i).plus(corrections.get(i)));
    }
    return adjusted;
  }

  /** The corners of the closed walk that begins at {@code first}. */
  public Ring corners(Vec first) {
    List<Vec> corners = new ArrayList<>();
    Vec at = first;
    for (Vec course : adjusted()) {
      corners.add(at);
      at = at.plus(course);
    }
    return new Ring(corners);
  }

  private static Vec sum(List<Vec> courses) {
    return courses.stream().reduce(Vec.ZERO, Vec::plus);
  }
}
