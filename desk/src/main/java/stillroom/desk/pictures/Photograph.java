package stillroom.desk.pictures;

import com.drew.imaging.ImageMetadataReader;
import com.drew.imaging.ImageProcessingException;
import com.drew.metadata.MetadataException;
import com.drew.metadata.exif.ExifIFD0Directory;
import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.RenderingHints;
import java.awt.geom.AffineTransform;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.util.Iterator;
import java.util.Optional;
import javax.imageio.IIOImage;
import javax.imageio.ImageIO;
import javax.imageio.ImageReadParam;
import javax.imageio.ImageReader;
import javax.imageio.ImageWriteParam;
import javax.imageio.ImageWriter;
import javax.imageio.stream.ImageInputStream;

/**
 * Makes a photograph small: upright, at most {@value #LONGEST_SIDE} pixels on its long side, as JPEG without what the camera wrote
 * into it (such as the place). Reads JPEG, PNG, GIF and BMP.
 */
final class Photograph {
    static final int LONGEST_SIDE = 1600;

    /** More than any camera makes; a crafted file could say anything. */
    private static final long MOST_PIXELS = 120_000_000;

    private static final float QUALITY = 0.85f;

    private Photograph() {}

    /** The small JPEG; empty where the bytes are no picture that can be read, or too large a one. */
    static Optional<byte[]> small(byte[] bytes) {
        try (ImageInputStream stream = ImageIO.createImageInputStream(new ByteArrayInputStream(bytes))) {
            Iterator<ImageReader> readers = ImageIO.getImageReaders(stream);
            if (!readers.hasNext()) {
                return Optional.empty();
            }
            ImageReader reader = readers.next();
            try {
                reader.setInput(stream, true, false);
                return read(reader).map(image -> jpeg(upright(fitted(image), turned(bytes))));
            } finally {
                reader.dispose();
            }
        } catch (IOException | RuntimeException unreadable) {
            // Decoders throw many kinds on damaged files; to the person they all mean the same.
            return Optional.empty();
        }
    }

    /** Reads every n-th pixel only, so that a large photograph never stands in memory as a whole. */
    private static Optional<BufferedImage> read(ImageReader reader) throws IOException {
        long width = reader.getWidth(0);
        long height = reader.getHeight(0);
        if (width * height > MOST_PIXELS) {
            return Optional.empty();
        }
        int every = (int) Math.max(1, Math.max(width, height) / LONGEST_SIDE / 2 * 2);
        ImageReadParam param = reader.getDefaultReadParam();
        param.setSourceSubsampling(every, every, 0, 0);
        return Optional.of(reader.read(0, param));
    }

    private static BufferedImage fitted(BufferedImage image) {
        double factor = Math.min(1, (double) LONGEST_SIDE / Math.max(image.getWidth(), image.getHeight()));
        int width = Math.max(1, (int) Math.round(image.getWidth() * factor));
        int height = Math.max(1, (int) Math.round(image.getHeight() * factor));
        return drawn(
                image,
                width,
                height,
                AffineTransform.getScaleInstance(
                        (double) width / image.getWidth(), (double) height / image.getHeight()));
    }

    private static BufferedImage drawn(BufferedImage image, int width, int height, AffineTransform how) {
        BufferedImage drawn = new BufferedImage(width, height, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = drawn.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, width, height);
        pen.setRenderingHint(RenderingHints.KEY_INTERPOLATION, RenderingHints.VALUE_INTERPOLATION_BILINEAR);
        pen.drawImage(image, how, null);
        pen.dispose();
        return drawn;
    }

    /** How the camera was held: 1 upright, 3 upside down, 6 and 8 on its sides (Exif, tag 0x0112). */
    private static int turned(byte[] bytes) {
        try {
            ExifIFD0Directory exif = ImageMetadataReader.readMetadata(new ByteArrayInputStream(bytes))
                    .getFirstDirectoryOfType(ExifIFD0Directory.class);
            return exif == null || !exif.containsTag(ExifIFD0Directory.TAG_ORIENTATION)
                    ? 1
                    : exif.getInt(ExifIFD0Directory.TAG_ORIENTATION);
        } catch (ImageProcessingException | IOException | MetadataException saysNothing) {
            return 1;
        }
    }

    private static BufferedImage upright(BufferedImage image, int turned) {
        int width = image.getWidth();
        int height = image.getHeight();
        return switch (turned) {
            case 3 -> drawn(image, width, height, new AffineTransform(-1, 0, 0, -1, width, height));
            case 6 -> drawn(image, height, width, new AffineTransform(0, 1, -1, 0, height, 0));
            case 8 -> drawn(image, height, width, new AffineTransform(0, -1, 1, 0, 0, width));
            default -> image;
        };
    }

    private static byte[] jpeg(BufferedImage image) {
        ImageWriter writer = ImageIO.getImageWritersByFormatName("jpeg").next();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (var out = ImageIO.createImageOutputStream(bytes)) {
            ImageWriteParam param = writer.getDefaultWriteParam();
            param.setCompressionMode(ImageWriteParam.MODE_EXPLICIT);
            param.setCompressionQuality(QUALITY);
            writer.setOutput(out);
            writer.write(null, new IIOImage(image, null, null), param);
        } catch (IOException full) {
            throw new IllegalStateException("a picture in memory could not be written", full);
        } finally {
            writer.dispose();
        }
        return bytes.toByteArray();
    }
}
