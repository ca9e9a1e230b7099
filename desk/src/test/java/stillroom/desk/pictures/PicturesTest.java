package stillroom.desk.pictures;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Map;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import stillroom.desk.OpenDesk;
import stillroom.formulary.batch.BatchEvent.Pictured;
import stillroom.formulary.batch.LogEntry;
import stillroom.ledger.store.Attachments;

class PicturesTest {
    @TempDir
    Path folder;

    /** Red on the left, blue on the right. */
    private static byte[] picture(int width, int height, String format) throws IOException {
        BufferedImage image = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setColor(Color.RED);
        pen.fillRect(0, 0, width / 2, height);
        pen.setColor(Color.BLUE);
        pen.fillRect(width / 2, 0, width - width / 2, height);
        pen.dispose();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        ImageIO.write(image, format, bytes);
        return bytes.toByteArray();
    }

    /** The same with an Exif block that says how the camera was held, and a name that must not be kept. */
    private static byte[] held(byte[] jpeg, int orientation) {
        byte[] exif = new byte[] {
            'E',
            'x',
            'i',
            'f',
            0,
            0,
            'M',
            'M',
            0,
            42,
            0,
            0,
            0,
            8,
            0,
            1,
            1,
            0x12,
            0,
            3,
            0,
            0,
            0,
            1,
            0,
            (byte) orientation,
            0,
            0,
            0,
            0,
            0,
            0
        };
        byte[] place = "GPS 52.1 N".getBytes(StandardCharsets.US_ASCII);
        int length = exif.length + place.length + 2;
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes(Arrays.copyOf(jpeg, 2));
        bytes.writeBytes(new byte[] {(byte) 0xff, (byte) 0xe1, (byte) (length >> 8), (byte) length});
        bytes.writeBytes(exif);
        bytes.writeBytes(place);
        bytes.writeBytes(Arrays.copyOfRange(jpeg, 2, jpeg.length));
        return bytes.toByteArray();
    }

    private static BufferedImage read(byte[] jpeg) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(jpeg));
    }

    private static boolean isRed(BufferedImage image, double x, double y) {
        Color colour = new Color(image.getRGB((int) (x * image.getWidth()), (int) (y * image.getHeight())));
        return colour.getRed() > 200 && colour.getBlue() < 60;
    }

    @Test
    void aLargePhotographBecomesSmallAndKeepsItsShape() throws IOException {
        BufferedImage small = read(Photograph.small(picture(5000, 3000, "jpeg")).orElseThrow());
        assertThat(small.getWidth()).isEqualTo(Photograph.LONGEST_SIDE);
        assertThat((double) small.getHeight() / small.getWidth()).isCloseTo(0.6, within(0.002));
        assertThat(isRed(small, 0.1, 0.5)).isTrue();
        assertThat(isRed(small, 0.9, 0.5)).isFalse();
        assertThat(read(Photograph.small(picture(40, 30, "png")).orElseThrow()).getWidth())
                .as("a small one is not blown up")
                .isEqualTo(40);
    }

    @Test
    void itIsTurnedUprightAndForgetsWhatTheCameraWrote() throws IOException {
        byte[] plain = picture(400, 200, "jpeg");
        byte[] kept = Photograph.small(held(plain, 6)).orElseThrow();
        BufferedImage quarter = read(kept);
        assertThat(quarter.getHeight()).isEqualTo(400);
        assertThat(isRed(quarter, 0.5, 0.1)).as("left is up").isTrue();
        BufferedImage other = read(Photograph.small(held(plain, 8)).orElseThrow());
        assertThat(isRed(other, 0.5, 0.9)).as("left is down").isTrue();
        BufferedImage half = read(Photograph.small(held(plain, 3)).orElseThrow());
        assertThat(isRed(half, 0.9, 0.5)).as("left is right").isTrue();
        assertThat(new String(kept, StandardCharsets.ISO_8859_1)).doesNotContain("GPS");
    }

    @Test
    void whatIsNoPictureIsRefused() throws IOException {
        byte[] whole = picture(400, 200, "jpeg");
        assertThat(Photograph.small("<svg onload=alert(1)>".getBytes(StandardCharsets.UTF_8)))
                .isEmpty();
        assertThat(Photograph.small(new byte[0])).isEmpty();
        byte[] png = picture(30, 30, "png");
        // The header of a PNG that says it is 60000 pixels wide and high.
        png[16] = 0;
        png[17] = 0;
        png[18] = (byte) 0xea;
        png[19] = 0x60;
        png[20] = 0;
        png[21] = 0;
        png[22] = (byte) 0xea;
        png[23] = 0x60;
        assertThat(Photograph.small(png)).isEmpty();
        assertThat(whole).isNotEmpty();
    }

    @Test
    void aPictureIsTakenIntoTheLogAndShownOnlyWithItsBatch() throws IOException {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            desk.post("/demonstration", Map.of());
            Map<String, String> form =
                    Map.of("requestId", "12345678-a", "when", "next day", "words", "<b>clear</b>", "by", "Wren");
            byte[] photograph = picture(2000, 1500, "jpeg");
            OpenDesk.Answer answer =
                    desk.postFile("/batches/3/pictures", form, "picture", "../../etc/photo.jpg", photograph);
            assertThat(answer.status()).as(answer.body()).isEqualTo(303);
            desk.postFile("/batches/3/pictures", form, "picture", "photo.jpg", photograph);
            var pictured = desk.ledger().batches().log(3).stream()
                    .map(LogEntry::event)
                    .filter(Pictured.class::isInstance)
                    .map(Pictured.class::cast)
                    .toList();
            assertThat(pictured).as("sent twice, taken once").hasSize(1);
            String hash = pictured.get(0).attachment();
            byte[] kept = desk.ledger().attachments().get(hash).orElseThrow();
            assertThat(Attachments.digest(kept)).isEqualTo(hash);
            String page = desk.get("/batches/3/pictures").body();
            assertThat(page).contains("/batches/3/pictures/" + hash + ".jpg", "&lt;b&gt;clear&lt;/b&gt;");
            assertThat(desk.get("/batches/3/pictures/" + hash + ".jpg").status())
                    .isEqualTo(200);
            assertThat(images(desk, "/batches/3/record.pdf")).isEqualTo(1);
            assertThat(desk.get("/batches/1/pictures/" + hash + ".jpg").status())
                    .as("not of this batch")
                    .isEqualTo(404);
        }
    }

    private static int images(OpenDesk desk, String path) throws IOException {
        int images = 0;
        try (PDDocument document = Loader.loadPDF(
                URI.create(desk.address() + path).toURL().openStream().readAllBytes())) {
            for (PDPage page : document.getPages()) {
                for (COSName name : page.getResources().getXObjectNames()) {
                    images += page.getResources().isImageXObject(name) ? 1 : 0;
                }
            }
        }
        return images;
    }

    @Test
    void aFileThatIsNoPictureOrTooLargeIsRefusedAndNothingKept() {
        try (OpenDesk desk = OpenDesk.in(folder)) {
            desk.post("/demonstration", Map.of());
            int before = desk.ledger().batches().log(3).size();
            Map<String, String> form = Map.of("requestId", "12345678-b", "when", "after", "by", "Wren");
            OpenDesk.Answer text = desk.postFile("/batches/3/pictures", form, "picture", "a.txt", new byte[] {1, 2});
            assertThat(text.status()).isEqualTo(422);
            assertThat(text.body()).contains("no picture that can be read here");
            OpenDesk.Answer none = desk.postFile("/batches/3/pictures", form, "picture", "", new byte[0]);
            assertThat(none.body()).contains("Choose a picture.");
            OpenDesk.Answer huge = desk.postFile("/batches/3/pictures", form, "picture", "a.jpg", new byte[45_000_000]);
            assertThat(huge.status()).isEqualTo(413);
            assertThat(huge.body()).doesNotContain("Exception");
            assertThat(desk.ledger().batches().log(3)).hasSize(before);
        }
    }
}
