package org.cagewall.kiosk;

import java.nio.file.Path;
import javax.swing.text.JTextComponent;
import org.cagewall.desk.Desk;
import org.cagewall.desk.TestDesk;
import org.cagewall.kiosk.shell.Destination;
import org.cagewall.room.CardFaces;
import org.cagewall.room.card.CardCode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A scanner that types, while a field of a real window has the keyboard. */
@RequiresDisplay
class ScannerInFieldTest {

    @TempDir
    Path folder;

    @Test
    void aScannedCardIsNotWrittenIntoTheFieldAndOpensItsCage() {
        try (Desk desk = TestDesk.furnished(folder.resolve("room"));
                Live live = Live.kiosk(desk)) {
            CardCode code = CardFaces.code(desk.room(), desk.room().cage("A2").orElseThrow());
            String elsewhere =
                    new CardCode(code.room().equals("ABC") ? "ABD" : "ABC", code.number(), code.digest()).text();
            live.press("nav.birds").tap("search");
            JTextComponent search = live.find("search", JTextComponent.class);
            live.waitUntil("the field has the keyboard", search::isFocusOwner);

            live.type("GREY").waitUntil("it is written", () -> search.getText().equals("GREY"));
            live.type(elsewhere + "\n").read("another birdroom").press("answer.ok");
            live.waitUntil(
                    "the code is out of the field", () -> search.getText().equals("GREY"));

            live.waitUntil("the field has the keyboard", search::isFocusOwner);
            live.type(code.text() + "\n")
                    .waitUntil(
                            "the cage is open",
                            () -> live.shell().stage().here().equals(Destination.Cage.byScan("A2")));
            live.see("all-well");
        }
    }
}
