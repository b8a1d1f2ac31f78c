package org.cagewall.cards;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.cagewall.paper.Sheet;
import org.cagewall.room.card.CardCode;
import org.cagewall.room.card.CardFace;

/** An invented birdroom's cards: the usual, the empty and the awkward. */
final class SampleCards {

    static final LocalDate TODAY = LocalDate.of(2026, 4, 14);

    private static final String ROOM = "B7K";

    private SampleCards() {}

    static List<CardToPrint> all() {
        List<CardFace> faces = List.of(
                pair("A1", "4", "HB 26-041", "HB 25-117").withRound(1),
                pair("B3", "12", "HB 24-009", "HB 25-203").withRound(2),
                CardFace.of("A3", "breeding"),
                CardFace.of("C12", "breeding").withHen("HB 25-118").withSince(LocalDate.of(2026, 2, 28)),
                CardFace.of("Flight 1", "flight")
                        .withSince(LocalDate.of(2026, 3, 2))
                        .withLines(List.of("hens")),
                CardFace.of("D4", "nursery")
                        .withSince(LocalDate.of(2026, 4, 6))
                        .withLines(List.of("HB 26-051", "HB 26-052", "HB 26-053", "HB 26-054", "HB 26-058")),
                CardFace.of("North quarantine", "quarantine")
                        .withSince(LocalDate.of(2026, 4, 2))
                        .withLines(List.of("Juniper", "Sorrel")),
                pair(
                                "The long cage behind the eastern window",
                                "Wren and Ash",
                                "Sir Bartholomew the Second, old grey",
                                "\u00C9lo\u00EFse")
                        .withRound(3),
                CardFace.of("B6", "hospital").withHen("HB 23-002").withSince(LocalDate.of(2026, 4, 13)),
                CardFace.of("Flight 2", "flight").withLines(rings(21)),
                pair("WWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWWW", "1", "\u9E1F 7", "pip \uD83D\uDC26"));
        List<CardToPrint> cards = new ArrayList<>();
        for (CardFace face : faces) {
            cards.add(new CardToPrint(face, CardCode.of(ROOM, cards.size() + 1, face), 21));
        }
        return cards;
    }

    /** As many breeding cages as asked for, each with a pair of its own. */
    static List<CardToPrint> pairs(int count) {
        List<CardToPrint> cards = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            CardFace face = pair(
                    "" + (char) ('A' + i / 12) + (1 + i % 12),
                    "" + (i + 1),
                    "HB 25-%03d".formatted(100 + i),
                    "HB 26-%03d".formatted(200 + i));
            cards.add(new CardToPrint(face, CardCode.of(ROOM, i + 1, face), 2));
        }
        return cards;
    }

    /** Where the symbols of so many cards lie on the sheets that they fill. */
    static List<SymbolTiles> tiles(int cards, Sheet sheet) {
        return IntStream.range(0, cards)
                .mapToObj(index -> SymbolTiles.of(sheet.place(index % sheet.cards())))
                .toList();
    }

    private static CardFace pair(String cage, String label, String cock, String hen) {
        return CardFace.of(cage, "breeding")
                .withPair(label)
                .withCock(cock)
                .withHen(hen)
                .withSince(LocalDate.of(2026, 4, 1));
    }

    private static List<String> rings(int count) {
        List<String> rings = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            rings.add("HB 26-%03d".formatted(i + 1));
        }
        return rings;
    }
}
