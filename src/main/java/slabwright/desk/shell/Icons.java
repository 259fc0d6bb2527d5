package slabwright.desk.shell;

import org.kordamp.ikonli.feather.Feather;
import org.kordamp.ikonli.javafx.FontIcon;

/** Line icons in the colour of the words around them. */
public final class Icons {
  private Icons() {}

  public static FontIcon of(Feather which, int size) {
    FontIcon icon = new FontIcon(which);
    icon.setIconSize(size);
    icon.getStyleClass().add("line-icon");
    return icon;
  }
}
