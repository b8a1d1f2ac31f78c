package org.cagewall.desk;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.cagewall.store.FirstSchema;
import org.cagewall.store.Store;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A record of the first version opened by this one: it is backed up before anything in it is changed. */
class UpdateTest {

    @TempDir
    Path home;

    @Test
    void anOldRecordIsBackedUpBeforeItIsBroughtUpToDateAndTheBackupRestores() throws IOException {
        Path folder = home.resolve("birds");
        FirstSchema.unpack(folder);

        Head head;
        try (Desk desk = opened(folder)) {
            head = head(desk);
        }

        DataFolder other = DataFolder.open(home.resolve("other"));
        assertThat(Archive.restore(backup(folder), other, TestDesk.clocks(), (entries, ofAll) -> {})
                        .entries())
                .isEqualTo(head.entries());
        try (Desk desk = Desk.open(other, Lanes.inline(), TestDesk.clocks())) {
            assertThat(head(desk)).isEqualTo(head);
        }
        opened(folder).close();
    }

    @Test
    void anOldRecordThatCannotBeBackedUpIsLeftAsItIs() throws IOException {
        Path folder = home.resolve("birds");
        FirstSchema.unpack(folder);
        Files.writeString(backup(folder), "a file where the folder should be");

        assertThatThrownBy(() -> opened(folder)).hasMessage("store.read-only");

        Files.delete(backup(folder));
        opened(folder).close();
        try (Stream<Path> files = Files.list(backup(folder))) {
            assertThat(files).as("it was still old").hasSize(2);
        }
    }

    private static Path backup(Path folder) {
        return folder.resolve("backup-before-update-to-" + Store.schema());
    }

    private static Desk opened(Path folder) {
        return Desk.open(DataFolder.open(folder), Lanes.inline(), TestDesk.clocks());
    }

    private static Head head(Desk desk) {
        List<Head> heads = new ArrayList<>();
        desk.study(Book::head, answer -> heads.add(((Reading.Got<Head>) answer).value()));
        return heads.get(0);
    }
}
