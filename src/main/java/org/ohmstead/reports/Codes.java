package org.ohmstead.reports;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.Map;
import org.ohmstead.reports.render.Picture;

/** Addresses as codes that a telephone reads off the paper. */
final class Codes {

    private Codes() {}

    /**
     * Survives a quarter of it being scratched or greasy (level Q). The paper around it is its light border.
     *
     * @param says for those who can't see it
     */
    static Picture of(String address, String says) {
        try {
            ByteMatrix modules = Encoder.encode(
                            address, ErrorCorrectionLevel.Q, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"))
                    .getMatrix();
            boolean[][] dark = new boolean[modules.getHeight()][modules.getWidth()];
            for (int row = 0; row < dark.length; row++) {
                for (int column = 0; column < dark[row].length; column++) {
                    dark[row][column] = modules.get(column, row) == 1;
                }
            }
            return new Picture(says, dark);
        } catch (WriterException e) {
            throw new IllegalArgumentException("Too long for a code: " + address, e);
        }
    }
}
