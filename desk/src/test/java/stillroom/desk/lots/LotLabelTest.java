package stillroom.desk.lots;

import static org.assertj.core.api.Assertions.assertThat;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The code on our labels reads back as the lot. */
class LotLabelTest {
    private static final int PIXELS = 6;

    @Test
    void theDrawnCodeReadsBackAsTheLot() throws Exception {
        for (String code : new String[] {"GLY-04", "A", "PMX-261125-12", "x".repeat(40)}) {
            QrCode drawn = QrCode.of(code);
            int side = drawn.size() * PIXELS;
            int[] pixels = new int[side * side];
            Arrays.fill(pixels, 0xFFFFFFFF);
            Matcher square = Pattern.compile("M(\\d+) (\\d+)h1v1h-1z").matcher(drawn.path());
            while (square.find()) {
                int left = Integer.parseInt(square.group(1)) * PIXELS;
                int top = Integer.parseInt(square.group(2)) * PIXELS;
                for (int i = 0; i < PIXELS * PIXELS; i++) {
                    pixels[(top + i / PIXELS) * side + left + i % PIXELS] = 0xFF000000;
                }
            }
            BinaryBitmap picture = new BinaryBitmap(new HybridBinarizer(new RGBLuminanceSource(side, side, pixels)));
            assertThat(new QRCodeReader().decode(picture).getText()).isEqualTo(code);
        }
    }
}
