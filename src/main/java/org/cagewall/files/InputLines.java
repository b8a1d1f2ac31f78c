package org.cagewall.files;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.cagewall.deed.Lines;
import org.cagewall.text.Message;

/**
 * Splits what comes in into lines as bytes, at each line feed, so that a line that is too long or no UTF-8 spoils no
 * other. Used by one thread, which waits for what comes.
 */
public final class InputLines {

    /** The longest line that a person may write, in bytes, its end left aside. */
    public static final int MOST_BYTES = 64 * 1024;

    /** The longest line that a backup may hold: no letter has more than four bytes in UTF-8, and a seal is short. */
    public static final int MOST_BYTES_KEPT = 4 * Lines.LONGEST + 1024;

    private static final String BYTE_ORDER_MARK = "\uFEFF";

    private final InputStream in;
    private final int most;
    private long number;

    /** The lines of this stream, of which none may have more bytes than that. */
    public InputLines(InputStream in, int most) {
        this.in = in;
        this.most = most;
    }

    /** The next line that is not blank; nothing at the end. */
    public Optional<InputLine> next() throws IOException {
        while (true) {
            ByteArrayOutputStream line = new ByteArrayOutputStream(256);
            long length = readLine(line);
            if (length < 0) {
                return Optional.empty();
            }
            number++;
            if (length > most) {
                return Optional.of(new InputLine.NoText(number, Message.of("line.too-many-bytes", most / 1024)));
            }
            if (!isBlank(line.toByteArray())) {
                return Optional.of(decoded(line.toByteArray()));
            }
        }
    }

    /**
     * Reads up to the next line feed or the end, keeping no more bytes than a line may have.
     *
     * @return how many bytes the line has; -1 when nothing was left
     */
    private long readLine(ByteArrayOutputStream line) throws IOException {
        long length = 0;
        int next = in.read();
        if (next < 0) {
            return -1;
        }
        while (next >= 0 && next != '\n') {
            if (length < most) {
                line.write(next);
            }
            length++;
            next = in.read();
        }
        return length;
    }

    private InputLine decoded(byte[] bytes) {
        try {
            String text = StandardCharsets.UTF_8
                    .newDecoder()
                    .decode(ByteBuffer.wrap(bytes))
                    .toString();
            boolean marked = number == 1 && text.startsWith(BYTE_ORDER_MARK);
            return new InputLine.Text(number, marked ? text.substring(BYTE_ORDER_MARK.length()) : text);
        } catch (CharacterCodingException e) {
            return new InputLine.NoText(number, Message.of("line.no-utf8"));
        }
    }

    private static boolean isBlank(byte[] bytes) {
        for (byte each : bytes) {
            boolean space = each == ' ' || each >= '\t' && each <= '\r';
            if (!space) {
                return false;
            }
        }
        return true;
    }
}
