package slabwright.drawing;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Random;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class EncodedPictureTest {
  private static final float QUALITY = 0.9f;

  private static BufferedImage noise(int type) {
    Random random = new Random(4);
    BufferedImage image = new BufferedImage(61, 37, type);
    for (int y = 0; y < image.getHeight(); y++) {
      for (int x = 0; x < image.getWidth(); x++) {
        image.setRGB(x, y, random.nextInt(0x1000000));
      }
    }
    return image;
  }

  @Test
  void whole_numbers_and_bytes_of_the_same_colours_give_the_same_file() {
    assertThat(EncodedPicture.of(noise(BufferedImage.TYPE_INT_RGB), QUALITY))
        .isEqualTo(EncodedPicture.of(noise(BufferedImage.TYPE_3BYTE_BGR), QUALITY));
  }

  @Test
  void red_stays_red() throws IOException {
    BufferedImage image = new BufferedImage(16, 16, BufferedImage.TYPE_INT_RGB);
    for (int i = 0; i < 256; i++) {
      image.setRGB(i % 16, i / 16, 0xc83214);
    }
    byte[] file = EncodedPicture.of(image, QUALITY).jpeg();
    int read = ImageIO.read(new ByteArrayInputStream(file)).getRGB(8, 8);
    assertThat(read >> 16 & 255).isBetween(196, 204);
    assertThat(read >> 8 & 255).isBetween(46, 54);
    assertThat(read & 255).isBetween(16, 24);
  }
}
