package org.cagewall.kiosk.cards;

import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What the page of cards shows. Immutable; any thread, and free of Swing.
 *
 * @param may what the person who records may do here
 * @param cages every cage in use: those whose card is missing or old first, each group in walking order
 * @param chosen the cages whose cards are to be printed
 * @param looked the cage whose card is looked at
 * @param sheets the sheets of paper there are to choose from
 * @param sheet the name of the one chosen
 * @param printers the printers of this machine, or that they are being looked for
 * @param printer the one chosen
 * @param work whether pages are being made just now
 * @param said what came of the last print, or why there was none
 */
public record CardsState(
        String subtitle,
        May may,
        List<CageCard> cages,
        Set<String> chosen,
        Optional<String> looked,
        List<SheetChoice> sheets,
        String sheet,
        PrintersFound printers,
        String printer,
        Work work,
        Optional<Said> said) {

    /** Who records: one who prints, or one who may only read. */
    public enum May {
        PRINT,
        READ
    }

    /** How a cage's card stands. */
    public enum Standing {
        NEVER_PRINTED,
        CHANGED,
        UP_TO_DATE
    }

    /** Whether pages are being made. */
    public enum Work {
        NONE,
        MAKING_PAGES
    }

    /** Whether a sentence is good news. */
    public enum Tone {
        DONE,
        PROBLEM
    }

    /** A sentence about what was tried. */
    public record Said(Tone tone, String words) {}

    /**
     * A cage and its card.
     *
     * @param first how the card stands, in words
     * @param second the first thing that has changed, or since when it hangs
     * @param changes all that has changed, a sentence each
     * @param face the card as it would be printed now
     */
    public record CageCard(
            String cage, Standing standing, String first, String second, List<String> changes, Face face) {

        public CageCard {
            changes = List.copyOf(changes);
        }
    }

    /** The words of a card, and its code. */
    public record Face(String name, String pair, String since, List<String> lines, String code) {

        public Face {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A sheet of paper.
     *
     * @param cards how many cards it holds; 0 where it cannot be used
     * @param refused why it cannot be used
     */
    public record SheetChoice(String name, String title, int cards, Optional<String> refused) {}

    /** The printers of this machine; empty while they are looked for. */
    public record PrintersFound(Optional<List<String>> names) {}

    public CardsState {
        cages = List.copyOf(cages);
        chosen = Set.copyOf(chosen);
        sheets = List.copyOf(sheets);
    }

    Optional<SheetChoice> theSheet() {
        return sheets.stream().filter(each -> each.name().equals(sheet)).findFirst();
    }

    /** How many sheets the chosen cards need. */
    int pages() {
        int each = theSheet().map(SheetChoice::cards).orElse(0);
        return each == 0 ? 0 : (chosen.size() + each - 1) / each;
    }

    boolean ready() {
        return may == May.PRINT && work == Work.NONE && pages() > 0;
    }

    Optional<CageCard> theLooked() {
        return cages.stream()
                .filter(each -> looked.equals(Optional.of(each.cage())))
                .findFirst();
    }

    CardsState choosing(Set<String> others) {
        return new CardsState(
                subtitle, may, cages, others, looked, sheets, sheet, printers, printer, work, Optional.empty());
    }

    CardsState lookingAt(String cage) {
        return new CardsState(
                subtitle, may, cages, chosen, Optional.of(cage), sheets, sheet, printers, printer, work, said);
    }

    CardsState onSheet(String name) {
        return new CardsState(
                subtitle, may, cages, chosen, looked, sheets, name, printers, printer, work, Optional.empty());
    }

    CardsState toPrinter(String name) {
        return new CardsState(
                subtitle, may, cages, chosen, looked, sheets, sheet, printers, name, work, Optional.empty());
    }

    CardsState working(Work now) {
        return new CardsState(
                subtitle, may, cages, chosen, looked, sheets, sheet, printers, printer, now, Optional.empty());
    }

    CardsState saying(Said what) {
        return new CardsState(
                subtitle, may, cages, chosen, looked, sheets, sheet, printers, printer, Work.NONE, Optional.of(what));
    }

    CardsState with(List<SheetChoice> allSheets, List<String> allPrinters) {
        String first = allSheets.stream()
                .map(SheetChoice::name)
                .filter(sheet::equals)
                .findFirst()
                .orElse(allSheets.get(0).name());
        String printing = allPrinters.contains(printer)
                ? printer
                : allPrinters.stream().findFirst().orElse("");
        return new CardsState(
                subtitle,
                may,
                cages,
                chosen,
                looked,
                allSheets,
                first,
                new PrintersFound(Optional.of(List.copyOf(allPrinters))),
                printing,
                work,
                said);
    }
}
