package org.cagewall.kiosk;

import java.nio.file.Path;
import java.time.LocalDate;
import org.cagewall.desk.Daybook;
import org.cagewall.text.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** What tests of a screen share that sit in one furnished birdroom: it is opened before each of them and closed after. */
public abstract class WithDaybook {

    protected static final LocalDate DAY = LocalDate.of(2026, 4, 14);
    protected static final Words WORDS = Words.english();

    @TempDir
    protected Path folder;

    protected Daybook book;

    @BeforeEach
    void open() {
        book = Daybook.furnished(folder.resolve("room"), DAY);
    }

    @AfterEach
    void close() {
        book.close();
    }

    /** Ines has been away since Sunday, and Tomas looks after the birds. */
    protected void inesIsAway() {
        book.tell("""
                {"deed":"away-planned","from":"2026-04-12","to":"2026-04-20","sitter":"Tomas","second":"Joan","vet":"Bird vet 0555 0190","by":"Ines"}
                """);
    }
}
