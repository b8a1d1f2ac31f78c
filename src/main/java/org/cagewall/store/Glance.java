package org.cagewall.store;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.time.LocalDate;
import java.util.HexFormat;
import java.util.Optional;
import org.cagewall.room.Room;

/**
 * The room as it stood when the record was last closed, kept in a file beside the record, so that the kiosk can show it
 * before Derby has compiled the questions by which a room is read. Good only for the very record whose last digest it
 * names; whatever else is wrong with it, it is as if there were none. Stateless but for its place; any thread.
 */
final class Glance {

    private static final RoomCoder CODER = new RoomCoder();

    /** Far more than any room takes; a longer file was not written here, and its seal does not fit. */
    private static final int MOST_BYTES = 64 * 1024 * 1024;

    private final Path file;

    Glance(Path record) {
        file = record.resolveSibling("glance");
    }

    /** The room that was kept, if the record has that last number and digest still. */
    Optional<Room> read(RoomReader.Head head) {
        return bytes().flatMap(bytes -> {
            try (DataInputStream in = new DataInputStream(new ByteArrayInputStream(bytes))) {
                if (!in.readUTF().equals(CODER.shape()) || !in.readUTF().equals(head.digest())) {
                    return Optional.empty();
                }
                String seal = in.readUTF();
                byte[] room = in.readAllBytes();
                return seal.equals(sealOf(room))
                        ? Optional.of(CODER.read(room)).filter(read -> read.head() == head.number())
                        : Optional.empty();
            } catch (IOException | RuntimeException e) {
                return Optional.empty();
            }
        });
    }

    /**
     * Keeps this room, unless the one that is kept serves as well. The old file stays whole until the new one is.
     *
     * @throws IOException when it cannot be written; the record does not suffer from that
     */
    void keep(RoomReader.Head head, Room room) throws IOException {
        if (head.number() != room.head() || serves(head, room.day())) {
            return;
        }
        byte[] coded = CODER.write(room);
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        DataOutputStream out = new DataOutputStream(bytes);
        out.writeUTF(CODER.shape());
        out.writeUTF(head.digest());
        out.writeUTF(sealOf(coded));
        out.write(coded);
        Path unfinished = file.resolveSibling(file.getFileName() + ".new");
        Files.write(unfinished, bytes.toByteArray());
        Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING, StandardCopyOption.ATOMIC_MOVE);
    }

    private boolean serves(RoomReader.Head head, LocalDate day) {
        return read(head).filter(kept -> !kept.day().isAfter(day)).isPresent();
    }

    private Optional<byte[]> bytes() {
        try (InputStream in = Files.newInputStream(file)) {
            return Optional.of(in.readNBytes(MOST_BYTES));
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static String sealOf(byte[] bytes) {
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("every Java has SHA-256", e);
        }
    }
}
