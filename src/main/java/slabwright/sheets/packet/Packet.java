package slabwright.sheets.packet;

import slabwright.units.Message;

/** The pages for one reader. */
public enum Packet {
  CLIENT("1-client"),
  CREW("2-crew"),
  SIGN_SHOP("3-sign-shop"),
  FIRE_AND_SAFETY("4-fire-and-safety"),
  OFFICE("5-office");

  private final String stem;

  Packet(String stem) {
    this.stem = stem;
  }

  /** What its files are called, without what tells their kind. */
  public String fileStem() {
    return stem;
  }

  /** What the packet is called. */
  public Message word() {
    return switch (this) {
      case CLIENT -> Message.of("sheets.packet.client");
      case CREW -> Message.of("sheets.packet.crew");
      case SIGN_SHOP -> Message.of("sheets.packet.sign-shop");
      case FIRE_AND_SAFETY -> Message.of("sheets.packet.fire-and-safety");
      case OFFICE -> Message.of("sheets.packet.office");
    };
  }

  /** Who reads it and what they find, as an index says. */
  public Message reader() {
    return switch (this) {
      case CLIENT -> Message.of("sheets.packet.client-reads");
      case CREW -> Message.of("sheets.packet.crew-reads");
      case SIGN_SHOP -> Message.of("sheets.packet.sign-shop-reads");
      case FIRE_AND_SAFETY -> Message.of("sheets.packet.fire-and-safety-reads");
      case OFFICE -> Message.of("sheets.packet.office-reads");
    };
  }
}
