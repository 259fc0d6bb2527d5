package slabwright.desk;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import slabwright.site.Form;
import slabwright.site.Mark;
import slabwright.site.MarkKind;
import slabwright.site.Spot;
import slabwright.site.edit.MarkEdit;
import slabwright.units.Length;

/**
 * A desk in a process of its own that sets one column after another, says so on its output as each
 * is set, and goes on until it is killed. Arguments: data folder, plan.
 */
final class KilledDesk {
  private KilledDesk() {}

  public static void main(String[] args) throws Exception {
    Path plan = Path.of(args[1]);
    DeskUnderTest desk = DeskUnderTest.open(Path.of(args[0]), 1280, 800, List.of(plan.toString()));
    for (int i = 1; ; i++) {
      Mark column = column(i);
      boolean done =
          DeskUnderTest.on(
              () -> desk.room().bench().desk().push(new MarkEdit.Put("a1", column)).isOk());
      System.out.println(done ? "set " + i : "refused");
      System.out.flush();
      Thread.sleep(40);
    }
  }

  private static Mark column(int i) {
    int row = i / 24;
    Spot at = Spot.mm(400 + 300.0 * (i % 24), 400 + 300.0 * row);
    return new Mark(
        "c" + i,
        "",
        new MarkKind.Column(),
        new Form.Circle(at, Length.mm(80)),
        OptionalInt.empty());
  }
}
