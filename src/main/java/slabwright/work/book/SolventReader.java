package slabwright.work.book;

import java.util.Optional;
import slabwright.units.Message;
import slabwright.work.air.Solvent;

/** Reads a solvent's data-sheet values; a solvent that lacks one can't be used. */
final class SolventReader {
  private SolventReader() {}

  static Optional<Solvent> read(BookSection s) {
    Figure<Double> gravity = s.number("specific_gravity", BookDimension.NUMBER);
    Figure<Double> mass = s.number("molar_mass", BookDimension.MOLAR_MASS);
    Figure<Double> lel = s.number("lower_explosive_limit", BookDimension.SHARE);
    Figure<Double> flash = s.number("flash_point", BookDimension.TEMPERATURE);
    Figure<Double> eightHour = s.number("8-hour_limit", BookDimension.PPM);
    Figure<Double> short15 = s.number("15-minute_limit", BookDimension.PPM);
    return gravity
        .with(mass, Physical::new)
        .with(lel.flatMap(SolventReader::some), (p, l) -> new Fire(p, l, 0))
        .with(flash, (f, t) -> new Fire(f.physical(), f.lel(), t))
        .with(eightHour, (f, ppm) -> solvent(s.name(), f, ppm, short15.maybe()))
        .maybe();
  }

  private static Figure<Double> some(double lel) {
    return lel > 0
        ? Figure.known(lel)
        : Figure.refused(Message.of("work.solvent-reader.a-lower-explosive-limit-of"));
  }

  private record Physical(double gravity, double mass) {}

  private record Fire(Physical physical, double lel, double flash) {}

  private static Solvent solvent(String name, Fire f, double ppm, Optional<Double> short15) {
    return Solvent.fromDataSheet(
        name, f.physical().gravity(), f.physical().mass(), f.lel(), f.flash(), ppm, short15);
  }
}
