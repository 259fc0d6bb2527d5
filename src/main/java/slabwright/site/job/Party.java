package slabwright.site.job;

/**
 * A contractor or client as letters and sheets name them; what is not known is empty.
 *
 * @param name of the firm or person
 * @param contact who is spoken to
 * @param address lines divided by line breaks
 */
public record Party(String name, String contact, String phone, String mail, String address) {
  public static final Party UNKNOWN = new Party("", "", "", "", "");
}
