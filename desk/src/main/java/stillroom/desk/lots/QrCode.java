package stillroom.desk.lots;

import com.google.zxing.BarcodeFormat;
import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.common.BitMatrix;
import com.google.zxing.qrcode.QRCodeWriter;
import java.util.Map;

/** A square code that a camera or a hand scanner reads, as an outline to be drawn. */
record QrCode(String path, int size) {
    /** Light squares round it, as the symbol demands. Source: ISO/IEC 18004, quiet zone of four modules. */
    private static final int QUIET = 4;

    static QrCode of(String text) {
        try {
            BitMatrix squares =
                    new QRCodeWriter().encode(text, BarcodeFormat.QR_CODE, 0, 0, Map.of(EncodeHintType.MARGIN, QUIET));
            StringBuilder path = new StringBuilder();
            for (int y = 0; y < squares.getHeight(); y++) {
                for (int x = 0; x < squares.getWidth(); x++) {
                    if (squares.get(x, y)) {
                        path.append('M').append(x).append(' ').append(y).append("h1v1h-1z");
                    }
                }
            }
            return new QrCode(path.toString(), squares.getWidth());
        } catch (WriterException tooLong) {
            throw new IllegalArgumentException("a code of " + text.length() + " characters cannot be drawn", tooLong);
        }
    }
}
