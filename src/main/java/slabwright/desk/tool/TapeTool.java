package slabwright.desk.tool;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import slabwright.desk.model.DeskContext;
import slabwright.desk.model.input.LengthUse;
import slabwright.desk.model.input.TypedLength;
import slabwright.desk.model.input.TypedSpot;
import slabwright.desk.model.plan.TapedRooms;
import slabwright.drawing.Ink;
import slabwright.shape.Bounds;
import slabwright.shape.Vec;
import slabwright.site.Spot;
import slabwright.tape.RoomResult;
import slabwright.tape.TapeWalk;
import slabwright.units.BareUnit;
import slabwright.units.LengthFormat;
import slabwright.units.Message;
import slabwright.units.Refusal;
import slabwright.units.Result;

/** Types a room wall by wall as the tape says it. */
public final class TapeTool implements Tool {
  private static final double RIGHT = -90;
  private static final double LEFT = 90;

  private final DeskContext bench;
  private final Runnable done;
  private final TapedRooms rooms;
  private final Consumer<TapeWalk> keep;
  private final TypedLength lengths;
  private final TypedLength places;
  private TapeWalk walk;
  private double turn;
  private double usual = RIGHT;

  /**
   * A walk that begins at a corner.
   *
   * @param done told when the room is closed
   * @param keep told of every wall, so that an unfinished walk is not lost
   */
  public TapeTool(
      DeskContext bench, TapedRooms rooms, TapeWalk walk, Consumer<TapeWalk> keep, Runnable done) {
    this.bench = bench;
    lengths = new TypedLength(LengthUse.WALL, () -> bench.desk().site().units());
    places = new TypedLength(LengthUse.PLACE, () -> bench.desk().site().units());
    this.rooms = rooms;
    this.walk = walk;
    this.keep = keep;
    this.done = done;
    this.turn = walk.walls().isEmpty() ? 0 : usual;
  }

  @Override
  public Message prompt() {
    if (walk.walls().isEmpty()) {
      return Message.of("desk.tool.tape.type-the-first-wall");
    }
    return walk.walls().size() < 2
        ? Message.of("desk.tool.tape.type-the-next-wall")
        : Message.of("desk.tool.tape.enter-closes");
  }

  @Override
  public Optional<Message> entry() {
    return Optional.of(Message.of("desk.tool.wall", walk.walls().size() + 1));
  }

  @Override
  public Optional<BareUnit> bare() {
    return Optional.of(lengths.bare());
  }

  @Override
  public Optional<String> meaning(String line) {
    return walk.walls().isEmpty() && TypedSpot.isOne(line)
        ? TypedSpot.meaning(line, places)
        : TypedWall.meaning(line, lengths);
  }

  @Override
  public Optional<Message> type(String line) {
    if (line.isBlank()) {
      return close();
    }
    if (walk.walls().isEmpty() && TypedSpot.isOne(line)) {
      return begin(TypedSpot.read(line, places::read));
    }
    Result<TypedWall> read = TypedWall.read(line, lengths::read);
    if (read instanceof Result.Refused<TypedWall> refused) {
      return Optional.of(refused.message());
    }
    TypedWall wall = read.orThrow();
    if (!(wall.length().mm() > 0)) {
      return Optional.of(Message.of("desk.tool.tape.longer-than-nothing"));
    }
    double t = walk.walls().isEmpty() ? 0 : wall.turn().orElse(turn);
    usual = Math.abs(t) == 90 ? t : usual;
    set(walk.with(new TapeWalk.Wall(wall.length(), t)));
    turn = usual;
    return Optional.empty();
  }

  /** The first corner lies where it was typed. */
  private Optional<Message> begin(Result<Spot> at) {
    if (at instanceof Result.Refused<Spot> refused) {
      return Optional.of(refused.message());
    }
    set(TapeWalk.from(at.orThrow().vec()));
    return Optional.empty();
  }

  private Optional<Message> close() {
    if (walk.walls().size() < 2) {
      return Optional.of(Message.of("desk.tool.tape.at-least-two-walls"));
    }
    RoomResult result = rooms.adjust(walk);
    if (!(result instanceof RoomResult.Adjusted adjusted)) {
      return Optional.of(TapedRooms.why(result));
    }
    if (NewFloorArea.make(
        bench, (id, name) -> rooms.area(id, name, adjusted.room(), walk, bench.words()))) {
      set(TapeWalk.from(Vec.ZERO));
      done.run();
      return Optional.empty();
    }
    return bench.desk().refusal().map(Refusal::message);
  }

  private void set(TapeWalk next) {
    walk = next;
    keep.accept(next);
  }

  @Override
  public List<Option> options() {
    if (walk.walls().isEmpty()) {
      return List.of();
    }
    return List.of(
        new Option(Message.of("desk.tool.tape.left"), turn == LEFT, () -> turn = LEFT),
        new Option(Message.of("desk.tool.tape.straight-on"), turn == 0, () -> turn = 0),
        new Option(Message.of("desk.tool.tape.right"), turn == RIGHT, () -> turn = RIGHT),
        new Option(
            Message.of("desk.tool.tape.half-turn"),
            Math.abs(turn) == 45,
            () -> turn = Math.signum(usual) * 45));
  }

  @Override
  public boolean steer(int right, int up) {
    if (up >= 0) {
      turn = right == 0 ? 0 : right < 0 ? LEFT : RIGHT;
    }
    return up >= 0;
  }

  @Override
  public Optional<Message> standing() {
    return walk.walls().isEmpty()
        ? Optional.empty()
        : Optional.of(
            Message.of(
                "desk.tool.to-closing",
                LengthFormat.show(walk.gap(), bench.desk().site().units())));
  }

  @Override
  public boolean stepBack() {
    if (walk.walls().isEmpty()) {
      return false;
    }
    set(walk.withoutLast());
    return true;
  }

  @Override
  public Optional<Message> lastStep() {
    int walls = walk.walls().size();
    return walls == 0 ? Optional.empty() : Optional.of(Message.of("desk.tool.wall", walls));
  }

  /** The walls stay on disk; only the tape is put down. */
  @Override
  public boolean escape() {
    int walls = walk.walls().size();
    if (walls > 0) {
      bench.desk().announce(Message.of("desk.tool.tape.walls-are-kept", walls));
    }
    return false;
  }

  /** Amid a walk a letter is a turn. */
  @Override
  public boolean begins(char c) {
    boolean walking = !walk.walls().isEmpty();
    return Tool.super.begins(c) || (walking ? "lrsLRS" : "-").indexOf(c) >= 0;
  }

  /** The walk lies on disk; Tape takes it up again. */
  @Override
  public void deactivate() {
    turn = usual;
  }

  @Override
  public List<Vec> ownCorners() {
    return walk.corners();
  }

  @Override
  public Bounds keptInView() {
    return walk.walls().isEmpty() ? Bounds.EMPTY : Bounds.of(walk.corners());
  }

  @Override
  public List<Ink> over(OverlayScale paper) {
    List<Ink> inks = new ArrayList<>();
    List<Vec> c = walk.corners();
    if (c.size() > 1) {
      inks.add(OverlayInks.line(c));
    }
    List<Integer> sides = TapeDimensions.sides(c);
    for (int i = 0; i + 1 < c.size(); i++) {
      inks.add(OverlayInks.length(c.get(i), c.get(i + 1), sides.get(i), paper));
    }
    if (c.size() > 2 && walk.gap() > paper.mm()) {
      inks.add(OverlayInks.guide(walk.end(), walk.start()));
    }
    c.forEach(p -> inks.addAll(OverlayInks.handle(p, paper)));
    inks.addAll(ahead(paper));
    return inks;
  }

  /** Shows where the next wall would go. */
  private List<Ink> ahead(OverlayScale paper) {
    double a = Math.toRadians(walk.heading(turn));
    return OverlayInks.ahead(walk.end(), new Vec(Math.cos(a), Math.sin(a)), paper);
  }
}
