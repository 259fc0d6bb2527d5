package slabwright.site.job;

import io.soabase.recordbuilder.core.RecordBuilder;
import java.util.Optional;

/**
 * A contractor or client as letters and sheets name them; what is not known is empty.
 *
 * @param name of the firm or person
 * @param contact who is spoken to
 * @param address lines divided by line breaks
 * @param mark what a contractor's papers show beside the name
 */
@RecordBuilder
public record Party(
    String name, String contact, String phone, String mail, String address, Optional<FirmMark> mark)
    implements PartyBuilder.With {
  public static final Party UNKNOWN = new Party("", "", "", "", "");

  /** Without a mark. */
  public Party(String name, String contact, String phone, String mail, String address) {
    this(name, contact, phone, mail, address, Optional.empty());
  }
}
