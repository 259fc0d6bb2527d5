package slabwright.shape.ints;

/** Numbers sorted into groups: the members of group g are {@code member(start(g)..end(g)-1)}. */
public final class IntGroups {
  private final int[] starts;
  private final int[] members;

  /** Member m belongs to group {@code groupOf[m]}; a negative group leaves it out. */
  public IntGroups(int groups, int[] groupOf) {
    starts = new int[groups + 1];
    for (int g : groupOf) {
      if (g >= 0) {
        starts[g + 1]++;
      }
    }
    for (int g = 0; g < groups; g++) {
      starts[g + 1] += starts[g];
    }
    members = new int[starts[groups]];
    int[] next = starts.clone();
    for (int m = 0; m < groupOf.length; m++) {
      if (groupOf[m] >= 0) {
        members[next[groupOf[m]]++] = m;
      }
    }
  }

  public int start(int group) {
    return starts[group];
  }

  public int end(int group) {
    return starts[group + 1];
  }

  /** How many groups there are. */
  public int size() {
    return starts.length - 1;
  }

  public int size(int group) {
    return starts[group + 1] - starts[group];
  }

  public int member(int position) {
    return members[position];
  }

  public void setMember(int position, int member) {
    members[position] = member;
  }
}
