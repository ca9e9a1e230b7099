package stillroom.ledger.imports;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The text that bytes stand for.
 *
 * @param remarks what had to be guessed
 */
record Decoded(String text, List<String> remarks) {
    private static final Charset WINDOWS = Charset.forName("windows-1252");
    private static final int LOOKED_AT = 4_000;

    /** By the mark at the beginning, else UTF-8 where that fits to the last byte, else Windows-1252. */
    static Decoded of(byte[] bytes) {
        if (begins(bytes, 0xEF, 0xBB, 0xBF)) {
            return strict(bytes, 3, StandardCharsets.UTF_8);
        }
        if (begins(bytes, 0xFF, 0xFE)) {
            return strict(bytes, 2, StandardCharsets.UTF_16LE);
        }
        if (begins(bytes, 0xFE, 0xFF)) {
            return strict(bytes, 2, StandardCharsets.UTF_16BE);
        }
        int zeros = zeros(bytes, 0) + zeros(bytes, 1);
        if (zeros > 0) {
            return withoutMark(bytes, zeros);
        }
        try {
            return new Decoded(decode(bytes, 0, StandardCharsets.UTF_8), List.of());
        } catch (CharacterCodingException otherCharacters) {
            return windows(bytes);
        }
    }

    private static Decoded windows(byte[] bytes) {
        String text = new String(bytes, WINDOWS);
        boolean odd = text.chars().anyMatch(sign -> sign == '\uFFFD' || sign < 9 || (sign >= 0x80 && sign < 0xA0));
        return new Decoded(
                text,
                odd
                        ? List.of(
                                "Some letters could not be read: the file is neither UTF-8 nor Windows-1252 throughout.")
                        : List.of());
    }

    /** Every other byte is 0 in Western text of 16 bits; anything else with zeros is no text. */
    private static Decoded withoutMark(byte[] bytes, int zeros) {
        int looked = Math.min(LOOKED_AT, bytes.length);
        boolean little = zeros(bytes, 1) > zeros(bytes, 0) * 10;
        boolean big = zeros(bytes, 0) > zeros(bytes, 1) * 10;
        if (zeros * 4 < looked || !(little || big)) {
            throw new UnreadableSheet("is no text and no XLSX file. Save it as XLSX or CSV and take that.");
        }
        return strict(bytes, 0, little ? StandardCharsets.UTF_16LE : StandardCharsets.UTF_16BE);
    }

    private static int zeros(byte[] bytes, int from) {
        int zeros = 0;
        for (int i = from; i < Math.min(LOOKED_AT, bytes.length); i += 2) {
            zeros += bytes[i] == 0 ? 1 : 0;
        }
        return zeros;
    }

    private static Decoded strict(byte[] bytes, int from, Charset charset) {
        try {
            return new Decoded(decode(bytes, from, charset), List.of());
        } catch (CharacterCodingException broken) {
            return new Decoded(
                    new String(bytes, from, bytes.length - from, charset),
                    List.of("Some letters could not be read: the file says that it is " + charset
                            + " and is not throughout."));
        }
    }

    private static String decode(byte[] bytes, int from, Charset charset) throws CharacterCodingException {
        return charset.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT)
                .onUnmappableCharacter(CodingErrorAction.REPORT)
                .decode(ByteBuffer.wrap(bytes, from, bytes.length - from))
                .toString();
    }

    private static boolean begins(byte[] bytes, int... signs) {
        for (int i = 0; i < signs.length; i++) {
            if (i >= bytes.length || (bytes[i] & 0xFF) != signs[i]) {
                return false;
            }
        }
        return true;
    }
}
