package org.ohmstead.onsite.web;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import com.google.zxing.BinaryBitmap;
import com.google.zxing.RGBLuminanceSource;
import com.google.zxing.common.HybridBinarizer;
import com.google.zxing.qrcode.QRCodeReader;
import java.net.URI;
import java.util.Arrays;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Read back from the drawing by the library's own reader, as a camera would see it. */
class QrCodeTest {

    private static final Pattern RUN = Pattern.compile("M(\\d+) (\\d+)h(\\d+)v1h-(\\d+)z");
    private static final int PIXELS = 6;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "https://batteries.example/strings/1/walk",
                "http://localhost:8080/strings/9007199254740991/walk",
                "https://umspannwerk.example/prüfung/strings/12/walk"
            })
    void theDrawingReadsBackAsTheAddress(String address) throws Exception {
        assertThat(read(QrCode.of(address).svg("walk"), 0)).isEqualTo(address);
    }

    @Test
    void aScratchedLabelIsReadAllTheSame() throws Exception {
        String address = "https://batteries.example/strings/42/walk";
        assertThat(read(QrCode.of(address).svg("walk"), 6)).isEqualTo(address);
    }

    @Test
    void theTitleCannotBreakOutOfTheDrawing() {
        assertThat(QrCode.of("x").svg("A & B <script>")).contains("A &amp; B &lt;script&gt;");
    }

    @Test
    void anAddressWithoutAHostIsRefusedAtTheStart() {
        assertThatThrownBy(() -> new OnSiteSettings(URI.create("batteries.example")))
                .hasMessageContaining("needs a scheme and a host");
    }

    /** @param scratch side of a square that is wiped out in the middle, in modules */
    static String read(String svg, int scratch) throws Exception {
        Matcher box = Pattern.compile("viewBox=\"0 0 (\\d+) ").matcher(svg);
        assertThat(box.find()).isTrue();
        int size = Integer.parseInt(box.group(1));
        boolean[][] dark = new boolean[size][size];
        for (Matcher run = RUN.matcher(svg); run.find(); ) {
            int from = Integer.parseInt(run.group(1));
            assertThat(run.group(4)).isEqualTo(run.group(3));
            Arrays.fill(dark[Integer.parseInt(run.group(2))], from, from + Integer.parseInt(run.group(3)), true);
        }
        int middle = (size - scratch) / 2;
        for (int y = middle; y < middle + scratch; y++) {
            Arrays.fill(dark[y], middle, middle + scratch, false);
        }
        return new QRCodeReader()
                .decode(new BinaryBitmap(
                        new HybridBinarizer(new RGBLuminanceSource(size * PIXELS, size * PIXELS, pixels(dark)))))
                .getText();
    }

    private static int[] pixels(boolean[][] dark) {
        int side = dark.length * PIXELS;
        int[] pixels = new int[side * side];
        for (int i = 0; i < pixels.length; i++) {
            pixels[i] = dark[i / side / PIXELS][i % side / PIXELS] ? 0 : 0xFFFFFF;
        }
        return pixels;
    }
}
