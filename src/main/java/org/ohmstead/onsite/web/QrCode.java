package org.ohmstead.onsite.web;

import com.google.zxing.EncodeHintType;
import com.google.zxing.WriterException;
import com.google.zxing.qrcode.decoder.ErrorCorrectionLevel;
import com.google.zxing.qrcode.encoder.ByteMatrix;
import com.google.zxing.qrcode.encoder.Encoder;
import java.util.Map;

/** A text as a QR code, drawn as one path of unit squares. */
final class QrCode {

    /** The light border that ISO/IEC 18004 asks for, in modules. */
    private static final int QUIET = 4;

    private final ByteMatrix modules;

    private QrCode(ByteMatrix modules) {
        this.modules = modules;
    }

    /** Survives a quarter of the label being scratched or greasy (level Q). */
    static QrCode of(String text) {
        try {
            return new QrCode(
                    Encoder.encode(text, ErrorCorrectionLevel.Q, Map.of(EncodeHintType.CHARACTER_SET, "UTF-8"))
                            .getMatrix());
        } catch (WriterException e) {
            throw new IllegalArgumentException("Too long for a code: " + text.length() + " characters", e);
        }
    }

    /** Always black on white, whatever the theme: that is what cameras read. */
    String svg(String title) {
        int size = modules.getWidth() + 2 * QUIET;
        return "<svg xmlns=\"http://www.w3.org/2000/svg\" role=\"img\" viewBox=\"0 0 " + size + " " + size
                + "\" shape-rendering=\"crispEdges\"><title>" + escaped(title) + "</title><rect width=\"" + size
                + "\" height=\"" + size + "\" fill=\"#fff\"/><path fill=\"#000\" d=\"" + path() + "\"/></svg>";
    }

    private String path() {
        StringBuilder path = new StringBuilder();
        for (int y = 0; y < modules.getHeight(); y++) {
            for (int x = 0; x < modules.getWidth(); x++) {
                int run = darkRun(x, y);
                if (run > 0) {
                    path.append('M').append(x + QUIET).append(' ').append(y + QUIET);
                    path.append('h').append(run).append("v1h-").append(run).append('z');
                    x += run;
                }
            }
        }
        return path.toString();
    }

    private int darkRun(int from, int y) {
        int x = from;
        while (x < modules.getWidth() && modules.get(x, y) == 1) {
            x++;
        }
        return x - from;
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;");
    }
}
