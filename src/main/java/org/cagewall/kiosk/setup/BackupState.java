package org.cagewall.kiosk.setup;

import java.util.List;
import java.util.Optional;
import org.cagewall.kiosk.kit.Problem;

/**
 * What the part of backups shows. Immutable; any thread, and free of Swing.
 *
 * @param folder where backups lie
 * @param kept the names of those that are there, the newest first
 * @param space how much the disk still takes; empty until that is known
 * @param said what came of the last one
 */
record BackupState(
        String folder,
        List<String> kept,
        Optional<String> space,
        Work work,
        Optional<String> said,
        Optional<Problem> problem) {

    /** Whether a backup is being written. */
    enum Work {
        NONE,
        WRITING
    }

    BackupState {
        kept = List.copyOf(kept);
    }

    BackupState writing() {
        return new BackupState(folder, kept, space, Work.WRITING, Optional.empty(), Optional.empty());
    }

    BackupState having(List<String> all) {
        return new BackupState(folder, all, space, work, said, problem);
    }

    BackupState leaving(String words) {
        return new BackupState(folder, kept, Optional.of(words), work, said, problem);
    }

    BackupState saying(String words) {
        return new BackupState(folder, kept, space, Work.NONE, Optional.of(words), Optional.empty());
    }

    BackupState wrong(String words) {
        return new BackupState(
                folder, kept, space, Work.NONE, Optional.empty(), Optional.of(new Problem("backup", words)));
    }

    BackupState atRest() {
        return new BackupState(folder, kept, space, Work.NONE, said, problem);
    }
}
