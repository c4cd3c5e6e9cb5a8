package weekwright.desk.cli;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import weekwright.desk.app.FileFault;

/** Standard output: data only, in UTF-8, and a failure to write is said. */
final class Output {
    private final OutputStream out;

    Output(OutputStream out) {
        this.out = out;
    }

    void text(String text) {
        bytes(text.getBytes(StandardCharsets.UTF_8));
    }

    void bytes(byte[] bytes) {
        try {
            out.write(bytes);
            out.flush();
        } catch (IOException e) {
            throw new FileFault("standard output could not be written: " + e.getMessage(), e);
        }
    }
}
